# shellcheck shell=bash disable=SC2034,SC2024
# Sourced by the scripts: which packages are missing, and installing them. Works on Debian 12 and Ubuntu 24.04.

say() { printf '%s\n' "turnscrew: $*"; }
fail() { printf '%s\n' "turnscrew: $*" >&2; exit 1; }

# What a build needs. Charts needs the three -dev packages after it by name, because recommended packages are left out.
build_packages=(g++ cmake ninja-build ccache libsqlite3-dev libxlsxwriter-dev libzint-dev libzbar-dev qt6-base-dev qt6-base-dev-tools qt6-serialport-dev qt6-charts-dev libqt6opengl6-dev libxkbcommon-dev
    libgl-dev qt6-l10n-tools qt6-tools-dev qt6-tools-dev-tools)
# What the program needs while it runs: both engines' drivers, WebP pictures, the typeface of the screens and papers, icons and what draws them, the words of Qt's own dialogs.
run_packages=(libqt6sql6-sqlite libqt6sql6-psql qt6-image-formats-plugins fonts-inter breeze-icon-theme libqt6svg6 qt6-translations-l10n)
# A session with Wayland and no X server shows windows only through this.
wayland_packages=(qt6-wayland)
# What the tests use beside that: text out of PDFs, line coverage, a second opinion on workbook files, a quick linker.
test_packages=(poppler-utils gcovr sqlite3 mold unzip)

installed() { [ "$(dpkg-query -W -f='${db:Status-Status}\n' "$1" 2>/dev/null | grep -m1 -x installed)" = installed ]; }
known() { apt-cache show --no-all-versions "$1" >/dev/null 2>&1; }

# The folder of the newest PostgreSQL server's programs; nothing where there is none. Debian keeps them off the PATH.
postgres_bin() {
    local folder
    for folder in $(printf '%s\n' /usr/lib/postgresql/*/bin | sort -rV) $(dirname "$(command -v initdb || true)" 2>/dev/null); do
        if [ -x "$folder/initdb" ] && [ -x "$folder/pg_ctl" ]; then
            echo "$folder"
            return
        fi
    done
}

# Runs one command as root, keeping its chatter in the file $setup_log.
as_root() {
    if [ "$(id -u)" = 0 ]; then
        env DEBIAN_FRONTEND=noninteractive "$@" >>"$setup_log" 2>&1 </dev/null
    elif [ -t 0 ]; then
        sudo env DEBIAN_FRONTEND=noninteractive "$@" >>"$setup_log" 2>&1
    else
        sudo -n env DEBIAN_FRONTEND=noninteractive "$@" >>"$setup_log" 2>&1 </dev/null
    fi
}

# Why the last command failed, in a few words, from the log.
complaint() {
    if grep -qE 'Failed to fetch|Could not resolve|Temporary failure|Could not connect|Unable to fetch' "$setup_log"; then
        echo "the packages could not be fetched, is the network there?"
    else
        { grep -E '^(E:|sudo:|dpkg: error)' "$setup_log" || tail -n 1 "$setup_log"; } | tail -n 1 | sed 's/^E: //'
    fi
}

apt_install() {
    as_root apt-get -y -q -o DPkg::Lock::Timeout=300 install --no-install-recommends "$@" ||
        fail "Cannot install $*: $(complaint) (all of apt's output: $setup_log)"
}

# Installs the PostgreSQL server without letting its package make and start a cluster of its own on this computer.
install_postgres() {
    local settings=/etc/postgresql-common/createcluster.conf done_well=yes
    apt_install postgresql-common
    as_root cp "$settings" "$settings.before-turnscrew" || fail "Cannot set $settings aside: $(complaint)"
    as_root sh -c "echo 'create_main_cluster = false' >$settings"
    as_root apt-get -y -q -o DPkg::Lock::Timeout=300 install --no-install-recommends postgresql || done_well=no
    as_root mv "$settings.before-turnscrew" "$settings"
    [ $done_well = yes ] || fail "Cannot install postgresql: $(complaint) (all of apt's output: $setup_log)"
}

# need_packages NAME…: installs what is missing; the name "postgresql" stands for any server that is there.
# Says what it will install, and asks only where somebody sits at a terminal. With nothing missing it runs no apt at all.
need_packages() {
    local name missing=() postgres=no answer
    if ! command -v dpkg-query >/dev/null || ! command -v apt-get >/dev/null; then
        say "This is not Debian or Ubuntu, so nothing is installed; these packages or their like are needed: $*"
        return
    fi
    for name in "$@"; do
        if [ "$name" = postgresql ]; then
            [ -n "$(postgres_bin)" ] || { postgres=yes; }
        elif ! installed "$name"; then
            missing+=("$name")
        fi
    done
    [ ${#missing[@]} -gt 0 ] || [ $postgres = yes ] || return 0

    local all="${missing[*]}"
    [ $postgres = no ] || all="${all:+$all }postgresql"
    say "These packages are missing and will be installed: $all"
    if [ "$(id -u)" != 0 ] && ! command -v sudo >/dev/null; then
        fail "Cannot install packages: this is not root and there is no sudo; as root, run: apt-get install --no-install-recommends $all"
    fi
    if [ -t 0 ]; then
        read -r -p "turnscrew: Install them now? [Y/n] " answer
        case $answer in [nN]*) fail "Nothing was installed; without these packages there is no build." ;; esac
    fi

    setup_log=$(mktemp -t turnscrew-install.XXXXXX)
    if [ "$(id -u)" != 0 ] && ! as_root true; then
        fail "Cannot install packages: sudo was refused ($(complaint)); as root, run: apt-get install --no-install-recommends $all"
    fi
    say "Installing; the first time this takes a few minutes."
    # A failed update is no trouble by itself: the lists may be there already. What is then still unknown is.
    as_root apt-get -q -o DPkg::Lock::Timeout=300 update || true
    for name in $all; do
        known "$name" || fail "Cannot install $name: apt does not know it; is the network there, and on Ubuntu the \"universe\" part enabled?"
    done
    if [ ${#missing[@]} -gt 0 ]; then
        apt_install "${missing[@]}"
    fi
    if [ $postgres = yes ]; then
        install_postgres
    fi
    rm -f "$setup_log"
}

# build_in FOLDER [-DOPTION…]: configures once, or again when the options changed, then builds; ninja looks for new files itself.
# What to build may be named in build_target.
build_in() {
    local folder=$1 options
    shift
    options="$*"
    if [ ! -f "$folder/build.ninja" ] || { [ -n "$options" ] && [ "$(cat "$folder/options" 2>/dev/null)" != "$options" ]; }; then
        cmake -S . -B "$folder" -G Ninja "$@" >"$folder.log" 2>&1 || {
            cat "$folder.log" >&2
            return 1
        }
        rm -f "$folder.log"
        echo "$options" >"$folder/options"
    fi
    cmake --build "$folder" ${build_target:+--target "$build_target"}
}

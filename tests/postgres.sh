# shellcheck shell=bash
# Sourced: a PostgreSQL server of the tests' own. It listens on a Unix socket in a temporary folder and nowhere else,
# keeps nothing, and is gone with the script that started it.

# Runs one command as the server's account: PostgreSQL refuses to run as root.
as_server() {
    if [ "$(id -u)" != 0 ]; then
        "$@"
    elif command -v runuser >/dev/null; then
        runuser -u "$pg_account" -- "$@"
    else
        su -s /bin/sh "$pg_account" -c "$(printf '%q ' "$@")"
    fi
}

# Sets TURNSCREW_TEST_PG to an empty database; the caller has postgres_bin of setup.sh and calls stop_postgres at its end.
start_postgres() {
    pg_bin=$(postgres_bin)
    [ -n "$pg_bin" ] || fail "There is no PostgreSQL server to test with."
    pg_account=$(id -un)
    if [ "$(id -u)" = 0 ]; then
        pg_account=nobody
        id postgres >/dev/null 2>&1 && pg_account=postgres
    fi
    pg_folder=$(mktemp -d -t turnscrew-pg.XXXXXX)
    [ "$(id -u)" != 0 ] || chown "$pg_account" "$pg_folder"
    {
        # The folder is the server's alone, so everybody who can reach the socket may come in.
        (cd "$pg_folder" && as_server "$pg_bin/initdb" -D "$pg_folder/data" -U turnscrew -A trust -E UTF8 --locale=C.UTF-8 --no-sync) &&
            (cd "$pg_folder" && as_server "$pg_bin/pg_ctl" -D "$pg_folder/data" -l "$pg_folder/log" -w -t 60 -o \
                "-c listen_addresses='' -c unix_socket_directories='$pg_folder' -c fsync=off -c full_page_writes=off -c synchronous_commit=off" start) &&
            "$pg_bin/createdb" -h "$pg_folder" -U turnscrew turnscrew_test
    } >"$pg_folder/start" 2>&1 || {
        cat "$pg_folder/start" "$pg_folder/log" >&2 2>/dev/null
        fail "The PostgreSQL server of the tests did not start; its own words stand above."
    }
    export TURNSCREW_TEST_PG="postgresql:///turnscrew_test?host=$pg_folder&user=turnscrew"
}

stop_postgres() {
    [ -n "${pg_folder:-}" ] || return 0
    (cd / && as_server "$pg_bin/pg_ctl" -D "$pg_folder/data" -m immediate -w -t 30 stop) >/dev/null 2>&1 || true
    rm -rf "$pg_folder"
    pg_folder=
}

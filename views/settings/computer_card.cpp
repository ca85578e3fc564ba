#include "views/settings/computer_card.h"

#include "views/settings/memory.h"
#include "views/style/style.h"
#include "views/widgets/ask.h"
#include "views/widgets/buttons.h"
#include "views/widgets/labelled.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QSpinBox>
#include <QVBoxLayout>

namespace ts {

ComputerCard::ComputerCard(Style &style, Memory &memory, QWidget *parent) : Card(tr("This computer"), parent), m_style(style), m_memory(memory)
{
    auto *scheme = new QComboBox(this);
    scheme->addItem(tr("Those of the system"), static_cast<int>(Scheme::FollowSystem));
    scheme->addItem(tr("Light"), static_cast<int>(Scheme::Light));
    scheme->addItem(tr("Dark"), static_cast<int>(Scheme::Dark));
    body()->addWidget(labelled(tr("Colours"), scheme, this, "quiet"));
    auto *percent = new QSpinBox(this);
    percent->setRange(80, 200);
    percent->setSingleStep(10);
    percent->setSuffix(tr(" %"));
    percent->setKeyboardTracking(false);
    body()->addWidget(labelled(tr("Size of the text"), percent, this, "quiet"));
    auto *language = new QComboBox(this);
    language->addItem(tr("That of the system"), QString());
    language->addItem(QStringLiteral("English"), QStringLiteral("en"));
    language->addItem(QStringLiteral("Deutsch"), QStringLiteral("de"));
    body()->addWidget(labelled(tr("Language, from the next start on"), language, this, "quiet"));
    addFolder(tr("Folder for backups"), tr("Beside the workbook"), &Memory::backupFolder, &Memory::setBackupFolder);
    addFolder(tr("Folder that is watched for photos"), tr("None"), &Memory::watchedFolder, &Memory::setWatchedFolder);

    const auto show = [this, scheme, percent] {
        scheme->setCurrentIndex(scheme->findData(static_cast<int>(m_style.scheme())));
        const QSignalBlocker quiet(percent);
        percent->setValue(m_style.textPercent());
    };
    show();
    language->setCurrentIndex(qMax(0, language->findData(m_memory.language())));
    connect(&m_style, &Style::changed, this, show);
    connect(scheme, &QComboBox::activated, this, [this, scheme] {
        const auto chosen = static_cast<Scheme>(scheme->currentData().toInt());
        m_memory.setScheme(chosen);
        m_style.setScheme(chosen);
    });
    connect(percent, &QSpinBox::valueChanged, this, [this](int value) {
        m_memory.setTextPercent(value);
        m_style.setTextPercent(value);
    });
    connect(language, &QComboBox::activated, this, [this, language] { m_memory.setLanguage(language->currentData().toString()); });
}

void ComputerCard::addFolder(const QString &label, const QString &hint, QString (Memory::*get)() const, void (Memory::*set)(const QString &))
{
    auto *field = new QLineEdit((m_memory.*get)(), this);
    field->setPlaceholderText(hint);
    field->setClearButtonEnabled(true);
    auto *choose = button(tr("Choose…"), this);
    choose->setAccessibleName(tr("Choose: %1").arg(label));
    auto *row = new QHBoxLayout;
    row->setSpacing(gap::small);
    row->addWidget(field, 1);
    row->addWidget(choose);
    body()->addWidget(labelled(label, field, row, this, "quiet"));
    connect(field, &QLineEdit::editingFinished, this, [this, field, set] { (m_memory.*set)(field->text().trimmed()); });
    connect(choose, &QPushButton::clicked, this, [this, field, label, set] {
        const QString folder = ask::folder(this, label, field->text());
        if (folder.isEmpty())
            return;
        field->setText(folder);
        (m_memory.*set)(folder);
    });
}

} // namespace ts

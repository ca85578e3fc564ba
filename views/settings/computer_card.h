#pragma once

#include "views/widgets/card.h"

namespace ts {

class Memory;
class Style;

/// What this computer remembers: colours, size of the text, language, folders.
class ComputerCard : public Card {
    Q_OBJECT
public:
    ComputerCard(Style &style, Memory &memory, QWidget *parent = nullptr);

private:
    void addFolder(const QString &label, const QString &hint, QString (Memory::*get)() const, void (Memory::*set)(const QString &));

    Style &m_style;
    Memory &m_memory;
};

} // namespace ts

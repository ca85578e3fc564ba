#pragma once

#include "views/places/place.h"

class QVBoxLayout;

namespace ts {

class Card;
class ChannelList;
class ComputerCard;
class MeterList;
class SettingField;

/// Settings of the workbook, its channels, and what this computer remembers.
class SettingsPlace : public Place {
    Q_OBJECT
public:
    explicit SettingsPlace(Workplace &workplace, QWidget *parent = nullptr);
    void focusFirst() override;
    [[nodiscard]] QString help() const override;
    void commitEdits() override;

protected:
    void refresh() override;

private:
    SettingField *field(Card *card, const QString &name, const QString &label, int form);
    void makePapers(Card *card);
    void makeMoney(Card *card);
    void makeBench(Card *card);

    QList<SettingField *> m_fields;
    SettingField *m_channel = nullptr;
    MeterList *m_meters;
    ChannelList *m_channels;
};

} // namespace ts

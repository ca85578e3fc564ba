#include "views/frame/long_work.h"

#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QThread>

namespace ts {

LongWork::LongWork(OpenDesk openDesk, QWidget *parent) : QFrame(parent), m_openDesk(std::move(openDesk))
{
    m_what = styledLabel("quiet", {}, this);
    m_bar = new QProgressBar(this);
    m_bar->setTextVisible(false);
    m_bar->setFixedWidth(140);
    m_bar->setAccessibleName(tr("How far it is"));
    auto *stopping = wordButton(tr("Stop"), this);
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(gap::small);
    row->addWidget(m_what);
    row->addWidget(m_bar);
    row->addWidget(stopping);
    connect(stopping, &QPushButton::clicked, this, &LongWork::stop);
    hide();
}

LongWork::~LongWork()
{
    stop();
    finish();
}

bool LongWork::start(const QString &what, Job job)
{
    if (isBusy())
        return false;
    m_what->setText(what);
    m_bar->setRange(0, 0);
    show();
    m_stop = std::make_shared<std::atomic<bool>>(false);
    m_answer = std::make_shared<Expected<QString>>(QString());
    // The desk is made, used and dropped in the thread: a database session belongs to one thread.
    m_thread = QThread::create([this, job = std::move(job), open = m_openDesk, stop = m_stop, answer = m_answer] {
        auto desk = open();
        if (!desk) {
            *answer = desk.trouble();
            return;
        }
        int shown = -1;
        *answer = job(**desk, [&](qint64 done, qint64 total) {
            const int permille = total > 0 ? static_cast<int>(done * 1000 / total) : 0;
            if (permille != shown) {
                shown = permille;
                QMetaObject::invokeMethod(
                    this,
                    [this, permille] {
                        m_bar->setRange(0, 1000);
                        m_bar->setValue(permille);
                    },
                    Qt::QueuedConnection);
            }
            return !stop->load();
        });
    });
    connect(m_thread, &QThread::finished, this, &LongWork::ended);
    m_thread->start();
    return true;
}

void LongWork::stop()
{
    if (m_stop)
        m_stop->store(true);
}

void LongWork::finish()
{
    if (!m_thread)
        return;
    m_thread->wait();
    ended();
}

void LongWork::ended()
{
    if (!m_thread)
        return; // finish() was quicker than the signal
    m_thread->wait();
    m_thread->deleteLater();
    m_thread = nullptr;
    hide();
    if (*m_answer) {
        if (!(*m_answer)->isEmpty())
            Q_EMIT done(**m_answer);
    } else {
        Q_EMIT refused(m_answer->trouble().sentence());
    }
}

} // namespace ts

#include "views/frame/long_work.h"

#include <QThread>

namespace ts {

LongWork::LongWork(OpenDesk openDesk, QWidget *parent) : ProgressLine(parent), m_openDesk(std::move(openDesk))
{
    connect(this, &ProgressLine::stopWanted, this, &LongWork::stop);
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
    begin(what);
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
                QMetaObject::invokeMethod(this, [this, permille] { advance(permille, 1000); }, Qt::QueuedConnection);
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

#pragma once

#include <QObject>
#include <QThreadPool>

#include <memory>
#include <utility>

namespace ts {

/// A thread beside the window for work that takes no desk: unpacking a picture, laying a paper out. One piece after the other. When it
/// goes away it waits for the piece in work and forgets the others.
class Background : public QObject {
public:
    explicit Background(QObject *parent = nullptr) : QObject(parent) { m_pool.setMaxThreadCount(1); }
    ~Background() override
    {
        m_pool.clear();
        m_pool.waitForDone();
    }

    /// Runs `work` there, then `done` with its answer here. Neither is run after this has gone.
    template <class Work, class Done>
    void run(Work work, Done done)
    {
        m_pool.start([this, work = std::move(work), done = std::move(done)]() mutable {
            auto answer = std::make_shared<decltype(work())>(work());
            QMetaObject::invokeMethod(this, [answer, done = std::move(done)] { done(*answer); }, Qt::QueuedConnection);
        });
    }
    /// Forgets what was not begun.
    void forget() { m_pool.clear(); }

private:
    QThreadPool m_pool;
};

} // namespace ts

#pragma once

#include "model/desk/desk.h"
#include "views/widgets/progress_line.h"

#include <atomic>
#include <functional>
#include <memory>

class QThread;

namespace ts {

/// Long work beside the window: an import, a backup. It has a desk of its own in a thread of its own, shows how far it is, and can
/// be stopped. One at a time.
class LongWork : public ProgressLine {
    Q_OBJECT
public:
    using OpenDesk = std::function<Expected<std::unique_ptr<Desk>>()>;
    /// Does the work and answers the sentence to say of it; asks `progress` now and then whether to go on.
    using Job = std::function<Expected<QString>(Desk &desk, const Progress &progress)>;

    explicit LongWork(OpenDesk openDesk, QWidget *parent = nullptr);
    ~LongWork() override; ///< stops what runs and waits for it

    [[nodiscard]] bool isBusy() const { return m_thread != nullptr; }
    /// Starts the work; `what` says what is being done ("Importing repairs.csv"). False where something is being done already.
    bool start(const QString &what, Job job);
    void stop();
    /// Waits until it has ended; for closing.
    void finish();

Q_SIGNALS:
    void done(const QString &sentence);
    void refused(const QString &sentence);

private:
    void ended();

    OpenDesk m_openDesk;
    QThread *m_thread = nullptr;
    std::shared_ptr<std::atomic<bool>> m_stop;
    std::shared_ptr<Expected<QString>> m_answer;
};

} // namespace ts

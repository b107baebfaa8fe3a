// A window where no display is: Qt says so in lines of its own and aborts; this says it in ours and exits.
#pragma once

#include <QStringList>
#include <functional>

namespace tailpoint {

/// Stands while the application is made, one at a time. Qt's fatal line ends the process with the status that
/// `instead` returns, and nothing is said but by `instead`; where the application can be made, Qt's remarks
/// on the way are said once this goes.
class InsteadOfAborting {
public:
    explicit InsteadOfAborting(std::function<int()> instead);
    ~InsteadOfAborting();
    InsteadOfAborting(const InsteadOfAborting&) = delete;
    InsteadOfAborting& operator=(const InsteadOfAborting&) = delete;

private:
    static void hear(QtMsgType type, const QMessageLogContext& context, const QString& message);
    static InsteadOfAborting* s_standing; ///< Qt's handlers get no context of ours

    std::function<int()> m_instead;
    QStringList m_remarks;
    QtMessageHandler m_before;
};

} // namespace tailpoint

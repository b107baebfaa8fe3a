// SPDX-License-Identifier: MIT
#include "ui/problems/roster.h"

#include "core/quantity/text.h"
#include "ui/files/files.h"

#include <algorithm>

namespace tailpoint {

std::variant<std::vector<std::string>, QString> readRoster(const QString& file) {
    const auto bytes = readBytes(file, QStringLiteral("roster"));
    if (const auto* error = std::get_if<FileError>(&bytes))
        return file + QStringLiteral(": ") + error->line();
    std::vector<std::string> roster;
    int number = 0;
    for (QByteArray line : std::get<QByteArray>(bytes).split('\n')) {
        if (++number == 1 && line.startsWith("\xEF\xBB\xBF"))
            line.remove(0, 3);
        const std::string name = line.trimmed().toStdString();
        if (name.empty())
            continue;
        const auto refused = [&](const char* why) {
            return QStringLiteral("%1:%2: '%3' %4")
                .arg(file, QString::number(number), QString::fromStdString(oneLine(name)),
                     QLatin1String(why));
        };
        if (!printableLength(name))
            return refused("can't be printed; save the names as UTF-8, one a line");
        if (std::find(roster.begin(), roster.end(), name) != roster.end())
            return refused("stands twice; tell the two apart");
        roster.push_back(name);
    }
    if (roster.empty())
        return file + QStringLiteral(": has no names; write one a line");
    return roster;
}

} // namespace tailpoint

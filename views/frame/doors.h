#pragma once

#include "model/desk/desk.h"

#include <functional>
#include <memory>

namespace ts {

/// How workbooks are opened and made. The application gives them, because the window never sees a database.
struct Doors {
    using Open = std::function<Expected<std::unique_ptr<Desk>>(const QString &book)>;
    Open open;   ///< a file or a server's address
    Open create; ///< a new, empty one; never over anything that is there
    Open demo;   ///< the demo workbook as a new file
};

} // namespace ts

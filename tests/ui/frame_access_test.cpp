// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/frame_fixture.h"
#include "tests/ui/support/look_of_all.h"
#include "ui/frame/main_window.h"
#include "ui/frame/panels.h"
#include "ui/pages/first_run/first_run_page.h"
#include "ui/pages/lanes/lanes_page.h"
#include "ui/widgets/text.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAccessible>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTest>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;

namespace {

QString nameOf(const QWidget& widget)
{
    return u"%1 \"%2\" in %3"_s.arg(QString::fromLatin1(widget.metaObject()->className()), widget.accessibleName(),
                                    widget.parentWidget() == nullptr ? QString()
                                                                     : widget.parentWidget()->accessibleName());
}

/// The Lanes page has tests of its own.
bool isOfLanes(const QWidget& widget)
{
    for (const QWidget* up = &widget; up != nullptr; up = up->parentWidget()) {
        if (qobject_cast<const LanesPage*>(up) != nullptr) {
            return true;
        }
    }
    return false;
}

/// Parts of stock widgets that take their name from the widget they belong to.
bool isInner(const QWidget& widget)
{
    const QWidget* parent = widget.parentWidget();
    return QByteArray(widget.metaObject()->className()) == "QComboBoxListView" ||
           qobject_cast<const QScrollBar*>(&widget) != nullptr || widget.objectName().startsWith(u"qt_"_s) ||
           qobject_cast<const QComboBox*>(parent) != nullptr || qobject_cast<const QLineEdit*>(parent) != nullptr ||
           qobject_cast<const QAbstractItemView*>(parent) != nullptr;
}

} // namespace

class AccessTest : public FrameTest
{
protected:
    AccessTest()
    {
        addKits();
        m_tank = addTank(u"Slate Ford"_s, 16);
        read(m_tank, u"no2"_s, u"0.8"_s, 2);
    }
    void open(double scale, const QSize& size)
    {
        m_window = std::make_unique<MainWindow>(m_keeper, m_forecasts, lookOfAll(Scheme::Light, scale), m_ask);
        m_window->resize(size);
        m_window->show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(m_window.get()));
    }
    ~AccessTest() override { lookOfAll(); }

    /// Every page and panel in turn.
    void everyView(const std::function<void(const QString&)>& look)
    {
        m_window->showPage(MainWindow::Page::Lanes);
        QApplication::processEvents();
        look(u"lanes"_s);
        m_window->showPage(MainWindow::Page::Rounds);
        QApplication::processEvents();
        look(u"rounds"_s);
        for (const QString& id :
             {u"entry.new"_s, u"entries"_s, u"tank.edit"_s, u"targets"_s, u"kits"_s, u"source"_s, u"keys"_s}) {
            m_window->actions().action(id)->trigger();
            QApplication::processEvents();
            look(id);
        }
        m_window->panels()->host()->close();
        m_keeper.close();
        QApplication::processEvents();
        look(u"first run"_s);
        ASSERT_TRUE(m_keeper.open(path(u"test.littoral"_s)));
    }

    record::TankId m_tank;
    std::unique_ptr<MainWindow> m_window;
};

TEST_F(AccessTest, NothingThatTakesTheKeyboardIsWithoutAName)
{
    open(1.0, {1600, 1000});
    for (QWidget* widget : m_window->findChildren<QWidget*>()) {
        if (widget->focusPolicy() == Qt::NoFocus || isInner(*widget) || isOfLanes(*widget)) {
            continue;
        }
        // As a screen reader is told it: the name given, else the words on the widget itself.
        const QAccessibleInterface* told = QAccessible::queryAccessibleInterface(widget);
        ASSERT_NE(told, nullptr);
        EXPECT_FALSE(told->text(QAccessible::Name).isEmpty()) << nameOf(*widget).toStdString();
    }
}

TEST_F(AccessTest, TargetsAreLargeEnough)
{
    open(1.0, {1600, 1000});
    everyView([&](const QString& view) {
        for (const QAbstractButton* button : m_window->findChildren<QAbstractButton*>()) {
            if (button->isVisible() && !isInner(*button)) {
                EXPECT_GE(button->height(), 24) << view.toStdString() << ": " << nameOf(*button).toStdString();
                EXPECT_GE(button->width(), 24) << view.toStdString() << ": " << nameOf(*button).toStdString();
            }
        }
    });
}

TEST_F(AccessTest, NoWordsAreCutAtAnySize)
{
    for (const auto& [scale, size] :
         {std::pair{1.0, QSize(1600, 1000)}, std::pair{1.0, QSize(1024, 680)}, std::pair{1.5, QSize(1600, 1000)},
          std::pair{2.0, QSize(1600, 1000)}, std::pair{2.0, QSize(1024, 680)}}) {
        open(scale, size);
        EXPECT_EQ(m_window->size(), size) << "nothing forces the window wider than " << size.width() << " at " << scale;
        everyView([&, scale = scale, size = size](const QString& view) {
            const auto where = [&](const QWidget& widget) {
                return u"%1 at %2, %3 wide: %4"_s.arg(view)
                    .arg(scale)
                    .arg(size.width())
                    .arg(nameOf(widget))
                    .toStdString();
            };
            for (const Text* text : m_window->findChildren<Text*>()) {
                if (!text->isVisible() || text->text().isEmpty() ||
                    text->sizePolicy().horizontalPolicy() == QSizePolicy::Ignored) {
                    continue;
                }
                if (text->wordWrap()) {
                    EXPECT_GE(text->height(), text->heightForWidth(text->width()))
                        << where(*text) << " " << text->text().toStdString();
                } else {
                    EXPECT_GE(text->width(), text->sizeHint().width())
                        << where(*text) << " " << text->text().toStdString();
                    EXPECT_GE(text->height(), text->sizeHint().height())
                        << where(*text) << " " << text->text().toStdString();
                }
            }
            for (const QPushButton* button : m_window->findChildren<QPushButton*>()) {
                if (button->isVisible() && !isOfLanes(*button)) {
                    EXPECT_GE(button->width(), button->sizeHint().width())
                        << where(*button) << " " << button->text().toStdString();
                }
            }
        });
        m_window.reset();
    }
}

} // namespace littoral::ui::test

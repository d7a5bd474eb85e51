// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QHash>
#include <QLocale>
#include <QString>
#include <QTranslator>
#include <memory>
#include <vector>

/// The languages the programs speak. The sources are English; resources/translations holds the rest.
namespace littoral::wording {

struct Language
{
    QString tag;  ///< "de"
    QString name; ///< in itself: "Deutsch"
};

[[nodiscard]] const std::vector<Language>& languages();
/// Of those above the one the desktop asks for first; English when it asks for none of them.
[[nodiscard]] QString systemLanguage();

/// Texts of the facts in another language: resources/facts/<tag>/*.json laid over the English files, record by record.
/// The contexts are those the facts are translated in everywhere: "Facts", "Templates", "Gates".
class FactTranslator final : public QTranslator
{
public:
    /// Texts that have no counterpart stay English.
    explicit FactTranslator(const QString& tag);

    [[nodiscard]] QString translate(const char* context, const char* source, const char* comment, int n) const override;
    [[nodiscard]] bool isEmpty() const override { return m_texts.isEmpty(); }

private:
    QHash<QByteArray, QString> m_texts; ///< "context\nsource"
};

/// Every text lengthened by two fifths and accented, between brackets, so that what is cut off or not translatable
/// shows. Placeholders, mnemonics and line breaks stay.
class PseudoTranslator final : public QTranslator
{
public:
    [[nodiscard]] QString translate(const char* context, const char* source, const char* comment, int n) const override;
    [[nodiscard]] bool isEmpty() const override { return false; }
};
[[nodiscard]] QString pseudoText(const QString& text);

/// The translators of one program. Lives as long as the program speaks; at most one at a time.
class Translation final
{
public:
    Translation();
    ~Translation();
    Translation(const Translation&) = delete;
    Translation& operator=(const Translation&) = delete;

    /// Speaks that language from now on; an unknown tag means English, "pseudo" the lengthened one. Texts made before
    /// stay as they are: a window has to be made anew. Numbers and dates follow through wording::localeFor and
    /// QLocale::setDefault, which is the caller's: scripts want theirs the same on every machine.
    void use(const QString& tag);
    [[nodiscard]] QString tag() const { return m_tag; }

private:
    void clear();

    QString m_tag;
    std::vector<std::unique_ptr<QTranslator>> m_installed;
};

/// How numbers and dates are written in a language: the desktop's own way where it is in that language.
[[nodiscard]] QLocale localeFor(const QString& tag);

} // namespace littoral::wording

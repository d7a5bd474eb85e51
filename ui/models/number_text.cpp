// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/number_text.h"

#include <QLocale>
#include <cmath>

namespace littoral::ui {

std::optional<double> numberFrom(const QString& text)
{
    QString plain = text.trimmed();
    plain.replace(u',', u'.');
    plain.replace(QChar(0x2212), u'-');
    bool ok = false;
    const double value = QLocale::c().toDouble(plain, &ok);
    return ok && std::isfinite(value) ? std::optional(value) : std::nullopt;
}

QString numberText(double value, int digits)
{
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator | QLocale::OmitLeadingZeroInExponent);
    const QString text = locale.toString(value, 'g', digits);
    return text.contains(locale.exponential(), Qt::CaseInsensitive) ? locale.toString(value, 'f', 0) : text;
}

QString numberText(const std::optional<double>& value)
{
    return value ? numberText(*value) : QString();
}

QString numberOrEmpty(double value)
{
    return value == 0.0 ? QString() : numberText(value);
}

} // namespace littoral::ui

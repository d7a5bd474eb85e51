// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wording/review_points.h"

#include "core/record/shown.h"

#include <QCoreApplication>
#include <algorithm>

namespace littoral::wording {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("ReviewPoints", text);
}

std::vector<ReviewPoint> makePoints()
{
    return {
        {u"review_plants"_s,
         words("Living plants against those planted"),
         {words("over 60 %"), words("30 to 60 %"), words("under 30 %")}},
        {u"review_leaves"_s, words("New leaves in a week"), {words("many"), words("some"), words("none")}},
        {u"review_algae"_s,
         words("Algae in two weeks"),
         {words("fewer, or none"), words("as before"), words("more, or half covered")}},
        {u"review_cause"_s, words("Cause found and removable"), {words("yes"), words("in part"), words("no")}},
        {u"review_bed"_s,
         words("Smell and colour of the bed"),
         {words("sweet"), words("dark patches"), words("black, rotten eggs")}},
        {u"review_water"_s,
         words("Ammonia and nitrite"),
         {words("both clear"), words("one raised"), words("both raised or swinging")}},
        {u"review_animals"_s,
         words("Animals"),
         {words("well, or none"), words("signs, or one loss"), words("lost every week")}},
        {u"review_structure"_s,
         words("Hardscape and flow"),
         {words("sound"), words("still corners"), words("slumped")}},
        {u"review_time"_s,
         words("Your time in the next three weeks"),
         {words("enough"), words("tight"), words("none")}},
    };
}

} // namespace

const std::vector<ReviewPoint>& reviewPoints()
{
    static record::PerLanguage<std::vector<ReviewPoint>> points(makePoints);
    return points.get();
}

const ReviewPoint* reviewPoint(const QString& key)
{
    const auto found = std::ranges::find(reviewPoints(), key, &ReviewPoint::key);
    return found == reviewPoints().end() ? nullptr : &*found;
}

std::optional<QString> reviewAnswerText(const QString& subject)
{
    const qsizetype cut = subject.indexOf(u'=');
    const ReviewPoint* point = cut < 0 ? nullptr : reviewPoint(subject.left(cut));
    bool read = false;
    const int answer = cut < 0 ? -1 : subject.mid(cut + 1).toInt(&read);
    if (point == nullptr || !read || answer < 0 || answer > 2) {
        return std::nullopt;
    }
    return words("%1: %2").arg(point->title, point->answers[static_cast<std::size_t>(answer)]);
}

} // namespace littoral::wording

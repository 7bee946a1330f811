package quantity

import (
	"cmp"
	"fmt"
	"time"
)

// Date is a day of the calendar. The zero Date is no day.
type Date struct{ Year, Month, Day int }

var dateScale = scale{name: "date", example: "2027-06-30"}

// ParseDate reads a day as year-month-day: "2027-06-30". Other orders are
// refused: 6/7/27 is another day in another country.
func ParseDate(text string) (Date, error) {
	if err := dateScale.admit(text); err != nil {
		return Date{}, err
	}
	r := reading{scale: &dateScale, text: text, end: len(text)}
	from, to := trimSpace(text, 0, len(text))
	day, err := time.Parse(time.DateOnly, text[from:to])
	switch {
	case err == nil && day.Year() > 0:
		return DateOf(day), nil
	case looksLikeDate(text[from:to]):
		return Date{}, r.fail(from, to, "which no calendar has", dateScale.wanted(), "")
	}
	return Date{}, r.fail(from, to, "which is not written year-month-day", dateScale.wanted(), "")
}

// looksLikeDate tells four, two and two digits parted by hyphens.
func looksLikeDate(text string) bool {
	if len(text) != len(time.DateOnly) {
		return false
	}
	for i := range len(text) {
		if hyphen := time.DateOnly[i] == '-'; hyphen != (text[i] == '-') || !hyphen && !isDigit(text[i]) {
			return false
		}
	}
	return true
}

// DateOf gives the day of a moment, in the moment's own time zone.
func DateOf(moment time.Time) Date {
	year, month, day := moment.Date()
	return Date{Year: year, Month: int(month), Day: day}
}

// IsZero tells that it is no day.
func (d Date) IsZero() bool { return d == Date{} }

// Before tells that the day comes before another.
func (d Date) Before(other Date) bool {
	return cmp.Or(cmp.Compare(d.Year, other.Year), cmp.Compare(d.Month, other.Month), cmp.Compare(d.Day, other.Day)) < 0
}

func (d Date) String() string { return fmt.Sprintf("%04d-%02d-%02d", d.Year, d.Month, d.Day) }

// Exact prints the day so that ParseDate gives the same one.
func (d Date) Exact() string { return d.String() }

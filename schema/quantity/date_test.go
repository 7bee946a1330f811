package quantity

import (
	"testing"
	"time"
)

func TestDate(t *testing.T) {
	t.Parallel()
	for text, want := range map[string]Date{
		"2027-06-30": {2027, 6, 30}, "2028-02-29": {2028, 2, 29}, "0001-01-01": {1, 1, 1}, "9999-12-31": {9999, 12, 31},
	} {
		got, err := ParseDate(text)
		if err != nil || got != want || got.IsZero() {
			t.Errorf("%q = %v, %v; want %v", text, got, err, want)
		}
		if again, err := ParseDate(got.String()); err != nil || again != got {
			t.Errorf("%q read again = %v, %v", got, again, err)
		}
	}
	const want = `expected a date such as "2027-06-30"`
	checkRefusals(t, Dates, []refusal{
		{"", "", `found an empty text; ` + want},
		{"2027-02-29", "2027-02-29", `found "2027-02-29", which no calendar has; ` + want},
		{"0000-01-01", "0000-01-01", `found "0000-01-01", which no calendar has; ` + want},
		{"2027-6-30", "2027-6-30", `found "2027-6-30", which is not written year-month-day; ` + want},
		{"30.06.2027", "30.06.2027", `found "30.06.2027", which is not written year-month-day; ` + want},
		{"2027-06-30T10:00", "2027-06-30T10:00", `found "2027-06-30T10:00", which is not written year-month-day; ` + want},
	})
}

func TestDatesInOrder(t *testing.T) {
	t.Parallel()
	days := []Date{{}, {2026, 12, 31}, {2027, 1, 1}, {2027, 1, 2}, {2027, 2, 1}}
	for i, a := range days {
		for j, b := range days {
			if a.Before(b) != (i < j) {
				t.Errorf("%v before %v: %v", a, b, a.Before(b))
			}
		}
	}
	if got := DateOf(time.Date(2026, 11, 25, 23, 59, 0, 0, time.UTC)); got.String() != "2026-11-25" {
		t.Errorf("the day is %v", got)
	}
}

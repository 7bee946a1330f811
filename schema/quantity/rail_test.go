package quantity

import (
	"testing"

	"github.com/google/go-cmp/cmp"
)

func TestRails(t *testing.T) {
	t.Parallel()
	for text, want := range map[string]Rail{
		"24 V, 4 A":     {24, 4},
		"24V,4A":        {24, 4},
		" 12 V , 25 mA": {12, 0.025},
		"1/2 V, .5 A":   {0.5, 0.5},
	} {
		got, err := ParseRail(text)
		if err != nil {
			t.Errorf("%q: %v", text, err)
			continue
		}
		if diff := cmp.Diff(want, got); diff != "" {
			t.Errorf("%q (-want +got):\n%s", text, diff)
		}
		if again, err := ParseRail(got.Exact()); err != nil || again != got {
			t.Errorf("%q read again from %q = %v, %v", text, got.Exact(), again, err)
		}
	}
	if got := (Rail{24, 0.025}).String(); got != "24 V, 25 mA" {
		t.Errorf("rail prints as %q", got)
	}
	const want = `expected a supply rail such as "24 V, 4 A"`
	checkRefusals(t, Rails, []refusal{
		{"", "", `found an empty text; ` + want},
		{"24 V", "24 V", `found "24 V" without a comma between volts and amperes; ` + want},
		{"24 V 4 A", "24 V 4 A", `found "24 V 4 A" without a comma between volts and amperes; ` + want},
		{"24 V, ", "", `found nothing; expected a current such as "4 A"`},
		{", 4 A", "", `found nothing; expected a voltage such as "100 V"`},
		{"4 A, 24 V", "4 A", `found "4 A", which is a current; expected a voltage such as "100 V"`},
		{"24 V, 4 W", "4 W", `found "4 W", which is a power; expected a current such as "4 A"`},
		{"24,5 V, 4 A", "24,5", `found "24,5", a number with a comma; expected a voltage such as "100 V"; write "24.5 V, 4 A"`},
		{"24 V, 4,5 A", "4,5", `found "4,5", a number with a comma; expected a current such as "4 A"; write "24 V, 4.5 A"`},
		{"24 V, 4", "4", `found "4", a number without a unit; expected a current such as "4 A"; write "24 V, 4 A"`},
		{"24 V, -4 A", "-4 A", `found "-4 A", which is negative; expected a current from 0.001 mA to 10000 A, or 0`},
		{"24 V, 4\x00A", "\x00", `found the invisible character U+0000; ` + want + `; delete it`},
	})
}

// TestIngress holds the codes of IEC 60529: first digit 0 to 6, second 0 to 9.
func TestIngress(t *testing.T) {
	t.Parallel()
	for text, want := range map[string]Ingress{
		"IP34": {3, 4}, "ip34": {3, 4}, "IP 34": {3, 4}, "IP00": {0, 0}, "IP69": {6, 9},
		"IPX4": {Unstated, 4}, "IP6X": {6, Unstated}, "ipx4": {Unstated, 4},
	} {
		got, err := ParseIngress(text)
		if err != nil || got != want {
			t.Errorf("%q = %v, %v; want %v", text, got, err, want)
		}
		if again, err := ParseIngress(got.String()); err != nil || again != want {
			t.Errorf("%q read again from %q = %v, %v", text, got, again, err)
		}
	}
	if got := (Ingress{Unstated, 4}).String(); got != "IPX4" {
		t.Errorf("code prints as %q", got)
	}
	const want = `expected an ingress protection such as "IP34"`
	checkRefusals(t, Ingresses, []refusal{
		{"", "", `found an empty text; ` + want},
		{"34", "34", `found "34", which does not start with IP; ` + want + `; write "IP34"`},
		{"outdoor", "outdoor", `found "outdoor", which does not start with IP; ` + want},
		{"IP5", "IP5", `found "IP5" without two digits; ` + want + `; write X for a digit that is not stated`},
		{"IP74", "7", `found "7" as the digit for solid objects; expected 0 to 6 or X there`},
		{"IP6é", "é", `found "é" as the digit for water; expected 0 to 9 or X there`},
		{"IP66W", "W", `found "W" after the two digits; expected nothing after "IP66"`},
		{"IP65/67", "/67", `found "/67" after the two digits; expected nothing after "IP65"`},
	})
}

package conductor_test

import (
	"testing"

	"loudlint/linter/conductor"
)

// The substitutions of NEC (2020) Table 725.154(A), from memory: which cable may stand for CL3P, CL2P, CL3 and CL2. Cable of
// limited use (X) is in the table for its own kind only; where it lies is not known here, and it counts for its class.
func TestSubstitution(t *testing.T) {
	t.Parallel()
	for _, test := range []struct {
		mark                 string
		cl3p, cl2p, cl3, cl2 bool
	}{
		{"CMP", true, true, true, true},
		{"CL3P", true, true, true, true},
		{"CL2P", false, true, false, true},
		{"CMR", false, false, true, true},
		{"CL3R", false, false, true, true},
		{"CL2R", false, false, false, true},
		{"CMG", false, false, true, true},
		{"CM", false, false, true, true},
		{"CL3", false, false, true, true},
		{"PLTC", false, false, true, true},
		{"CL2", false, false, false, true},
		{"CL3X", false, false, true, true},
		{"CL2X", false, false, false, true},
		{"CMX", false, false, true, true},
	} {
		m, ok := conductor.ParseMarking(test.mark)
		if !ok {
			t.Errorf("%s is not recognised", test.mark)
		}
		for _, place := range []struct {
			name  string
			class int
			air   bool
			want  bool
		}{
			{"CL3P", 3, true, test.cl3p},
			{"CL2P", 2, true, test.cl2p},
			{"CL3", 3, false, test.cl3},
			{"CL2", 2, false, test.cl2},
			{"a power cable", 1, false, false},
		} {
			if got := m.Serves(place.class, place.air, false); got != place.want {
				t.Errorf("%s in place of %s: %t", test.mark, place.name, got)
			}
		}
		// In a metal raceway any of its class may pass through a void that carries air; a raceway makes no Class 1 of it.
		if m.Serves(3, true, true) != test.cl3 || m.Serves(1, false, true) {
			t.Errorf("%s in a raceway", test.mark)
		}
	}
}

func TestPowerMarkings(t *testing.T) {
	t.Parallel()
	for _, test := range []struct {
		mark                             string
		open, inRaceway, inAir, airInRun bool // airInRun: through a void that carries air, in a raceway
	}{
		{"THHN", false, true, false, true},
		{"THWN-2", false, true, false, true},
		{"MC", true, true, true, true},
		{"NM-B", true, true, false, true},
	} {
		m, ok := conductor.ParseMarking(test.mark)
		if !ok || m.Class() != 1 {
			t.Errorf("%s: %t, class %d", test.mark, ok, m.Class())
		}
		for _, class := range []int{1, 2, 3} {
			got := [4]bool{m.Serves(class, false, false), m.Serves(class, false, true), m.Serves(class, true, false), m.Serves(class, true, true)}
			if got != [4]bool{test.open, test.inRaceway, test.inAir, test.airInRun} {
				t.Errorf("%s on Class %d: %v", test.mark, class, got)
			}
		}
	}
}

func TestParseMarking(t *testing.T) {
	t.Parallel()
	for _, test := range []struct {
		text  string
		ok    bool
		class int
	}{
		{"CL3P", true, 3},
		{"cl2p", true, 2},
		{"FPLP/CL3P 75C", true, 3},
		{"CL2 or CL3", true, 3},
		{"CL2,CMP", true, 3},
		{"FPLP", false, 0},
		{"H05VV-F 2x1.5", false, 0},
		{"300 V AC", false, 0},
		{"", false, 0},
	} {
		m, ok := conductor.ParseMarking(test.text)
		if ok != test.ok || m.Class() != test.class {
			t.Errorf("%q: %t, class %d", test.text, ok, m.Class())
		}
	}
	// Of two markings each counts for itself: neither of these is Class 3 cable for plenums.
	if m, _ := conductor.ParseMarking("CL2P CL3"); m.Serves(3, true, false) {
		t.Error("CL2P CL3 passes as CL3P")
	}
}

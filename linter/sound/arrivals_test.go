package sound

import (
	"math"
	"testing"
)

// Two loudspeakers 40 m apart: 3 m from one, the other is 34 m of way later, which
// 343 m/s make 99 ms, and 20 lg(37/3) = 21.8 dB below. 29 m from the one, it is early again.
func TestArrivals(t *testing.T) {
	t.Parallel()
	m := NewModel(Space{Air: Air{Celsius: 20}}, []Loudspeaker{{OnAxisDB: SpeechDB(100)}, {At: Vector{X: 40}, OnAxisDB: SpeechDB(100)}})
	got := m.Arrivals(Vector{X: 37}, nil)
	if len(got) != 2 || got[0].Loudspeaker != 1 || got[1].Loudspeaker != 0 {
		t.Fatalf("%+v", got)
	}
	within(t, "delay", got[1].Seconds-got[0].Seconds, 34/343.2, 1e-6)
	within(t, "level difference", got[0].LevelDBA-got[1].LevelDBA, 20*math.Log10(37.0/3), 1e-6)
	if late := Late(got, 0.05, 10); len(late) != 0 {
		t.Errorf("21.8 dB below is no echo: %+v", late)
	}
	if late := Late(got, 0.05, 25); len(late) != 1 {
		t.Errorf("%+v", late)
	}
}

func TestLate(t *testing.T) {
	t.Parallel()
	for _, test := range []struct {
		name     string
		arrivals []Arrival
		want     []int // loudspeakers
	}{
		{"none", nil, nil},
		{"one", []Arrival{{0, 0.1, 80}}, nil},
		{"late and loud", []Arrival{{0, 0, 80}, {1, 0.06, 75}}, []int{1}},
		{"just early enough", []Arrival{{0, 0, 80}, {1, 0.05, 79}}, nil},
		{"late and weak", []Arrival{{0, 0, 80}, {1, 0.06, 70}}, nil},
		{"late but below the sum of two", []Arrival{{0, 0, 80}, {1, 0.01, 80}, {2, 0.06, 72}}, nil},
		{"earlier ones count whether late or not", []Arrival{{0, 0, 71}, {1, 0.06, 80}, {2, 0.07, 69}}, []int{1}},
		{"a whisper before does not start the clock", []Arrival{{0, 0, 50}, {1, 0.06, 80}, {2, 0.10, 79}}, nil},
		{"but what follows the clock does", []Arrival{{0, 0, 50}, {1, 0.06, 80}, {2, 0.12, 79}}, []int{2}},
	} {
		var got []int
		for _, late := range Late(test.arrivals, 0.05, 10) {
			got = append(got, late.Loudspeaker)
		}
		if len(got) != len(test.want) || len(got) == 1 && got[0] != test.want[0] {
			t.Errorf("%s: %v, want %v", test.name, got, test.want)
		}
	}
	if late := Late([]Arrival{{3, 0, 50}, {7, 0.06, 80}, {2, 0.12, 79}}, 0.05, 10); len(late) != 1 || late[0].First != 7 {
		t.Errorf("after %+v", late)
	}
	late := Late([]Arrival{{0, 1, 80}, {1, 1.01, 80}, {2, 1.07, 76}}, 0.05, 10)
	within(t, "below the earlier sum", late[0].BelowDB, 80+3.0103-76, 1e-4)
	within(t, "after the first", late[0].AfterSeconds, 0.07, 1e-9)
}

package drawing

import (
	"math"
	"testing"

	"github.com/google/go-cmp/cmp"
)

func TestSteps(t *testing.T) {
	t.Parallel()
	inf := math.Inf(1)
	for name, one := range map[string]struct {
		axis       axis
		long, each float64
		want       []string
	}{
		"twos":           {axis{max: 137}, 450, 56, []string{"0", "20", "40", "60", "80", "100", "120"}},
		"fives":          {axis{max: 405}, 460, 56, []string{"0", "50", "100", "150", "200", "250", "300", "350", "400"}},
		"tens":           {axis{max: 1}, 190, 19, []string{"0.0", "0.1", "0.2", "0.3", "0.4", "0.5", "0.6", "0.7", "0.8", "0.9", "1.0"}},
		"tenths":         {axis{max: 1.1}, 190, 34, []string{"0.0", "0.2", "0.4", "0.6", "0.8", "1.0"}},
		"hundredths":     {axis{max: 0.1}, 190, 34, []string{"0.00", "0.02", "0.04", "0.06", "0.08", "0.10"}},
		"off zero":       {axis{min: -7, max: 9}, 200, 50, []string{"-5", "0", "5"}},
		"given":          {axis{min: 62.5, max: 130, ticks: octaves()}, 450, 56, []string{"63", "125"}},
		"nothing":        {axis{}, 450, 56, nil},
		"no length":      {axis{max: 1}, 0, 56, nil},
		"not a number":   {axis{max: math.NaN()}, 450, 56, nil},
		"without bounds": {axis{max: inf}, 450, 56, nil},
	} {
		var got []string
		for _, s := range one.axis.steps(one.long, one.each) {
			if s.at < one.axis.min || s.at > one.axis.max {
				t.Errorf("%s: %g is beyond the axis", name, s.at)
			}
			got = append(got, s.label)
		}
		if diff := cmp.Diff(one.want, got); diff != "" {
			t.Errorf("%s (-want +got):\n%s", name, diff)
		}
	}
}

func TestShare(t *testing.T) {
	t.Parallel()
	for _, one := range []struct {
		axis     axis
		at, want float64
	}{
		{axis{max: 200}, 50, 0.25},
		{axis{min: -1, max: 1}, 0, 0.5},
		{axis{min: 62.5, max: 16000, log: true}, 62.5, 0},
		{axis{min: 62.5, max: 16000, log: true}, 1000, 0.5},
		{axis{min: 62.5, max: 16000, log: true}, 2000, 0.625},
	} {
		if got := one.axis.share(one.at); math.Abs(got-one.want) > 1e-12 {
			t.Errorf("%g lies at %g of the axis, want %g", one.at, got, one.want)
		}
	}
}

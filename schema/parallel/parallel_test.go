package parallel

import (
	"slices"
	"sync/atomic"
	"testing"
)

func TestDo(t *testing.T) {
	t.Parallel()
	for _, workers := range []int{0, 1, 2, 7, 200} {
		for _, n := range []int{0, 1, 5, 100} {
			got := make([]int, n)
			Do(n, workers, func(i int) { got[i]++ })
			if slices.ContainsFunc(got, func(times int) bool { return times != 1 }) {
				t.Errorf("%d workers, %d calls: called %v times", workers, n, got)
			}
		}
	}
}

// A panic on another goroutine would end the program.
func TestPanicReachesCaller(t *testing.T) {
	t.Parallel()
	for _, workers := range []int{1, 2, 4} {
		var done atomic.Int32
		func() {
			defer func() {
				if got := recover(); got != "third" && workers > 1 || got == nil {
					t.Errorf("%d workers: recovered %v", workers, got)
				}
			}()
			Do(10, workers, func(i int) {
				switch i {
				case 2:
					panic("third")
				case 8:
					panic("ninth")
				}
				done.Add(1)
			})
		}()
		if workers > 1 && done.Load() != 8 {
			t.Errorf("%d workers: %d calls ended, not 8", workers, done.Load())
		}
	}
}

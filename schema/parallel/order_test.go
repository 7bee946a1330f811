package parallel

import (
	"slices"
	"sync/atomic"
	"testing"
	"testing/synctest"
)

func TestInOrder(t *testing.T) {
	t.Parallel()
	for _, workers := range []int{0, 1, 2, 7, 200} {
		for _, n := range []int{0, 1, 5, 100} {
			var got []int
			for i, square := range InOrder(n, workers, func(i int) int { return i * i }) {
				if square != i*i {
					t.Errorf("%d workers: result %d is %d", workers, i, square)
				}
				got = append(got, i)
			}
			if len(got) != n || !slices.IsSorted(got) {
				t.Errorf("%d workers, %d calls: results came as %v", workers, n, got)
			}
		}
	}
}

// TestWindow lets everything be made that can be made before each result is
// used: as many are alive as is promised, and never more.
func TestWindow(t *testing.T) {
	t.Parallel()
	for _, workers := range []int{1, 2, 3, 8} {
		synctest.Test(t, func(t *testing.T) {
			var alive atomic.Int32
			most := 0
			for range InOrder(50, workers, func(i int) int { alive.Add(1); return i }) {
				synctest.Wait() // until no worker can go on
				most = max(most, int(alive.Load()))
				alive.Add(-1)
			}
			if want := MostAlive(workers); most != want {
				t.Errorf("%d workers: %d results were alive at once, want %d", workers, most, want)
			}
		})
	}
}

// TestSlowFirst holds the first result back until the others that may be made are
// there.
func TestSlowFirst(t *testing.T) {
	t.Parallel()
	for _, workers := range []int{2, 3, 8} {
		synctest.Test(t, func(t *testing.T) {
			hold := make(chan bool)
			var begun atomic.Int32
			go func() {
				synctest.Wait()
				if got, want := int(begun.Load()), MostAlive(workers); got != want {
					t.Errorf("%d workers: %d calls began before the first ended, want %d", workers, got, want)
				}
				close(hold)
			}()
			for range InOrder(50, workers, func(i int) int {
				begun.Add(1)
				if i == 0 {
					<-hold
				}
				return i
			}) {
				continue
			}
		})
	}
}

func TestLeftEarly(t *testing.T) {
	t.Parallel()
	for _, workers := range []int{1, 2, 8} {
		var begun atomic.Int32
		for i := range InOrder(1000, workers, func(i int) int { begun.Add(1); return i }) {
			if i == 3 {
				break
			}
		}
		if got := int(begun.Load()); got > 4+MostAlive(workers) {
			t.Errorf("%d workers: %d calls began", workers, got)
		}
	}
}

// A panic comes when its turn has come, in the goroutine of the loop.
func TestPanicInOrder(t *testing.T) {
	t.Parallel()
	for _, workers := range []int{1, 2, 4} {
		var got []int
		func() {
			defer func() {
				if mistake := recover(); mistake != "third" {
					t.Errorf("%d workers: recovered %v", workers, mistake)
				}
			}()
			for i := range InOrder(10, workers, func(i int) int {
				if i == 2 {
					panic("third")
				}
				return i
			}) {
				got = append(got, i)
			}
		}()
		if !slices.Equal(got, []int{0, 1}) {
			t.Errorf("%d workers: results %v came first", workers, got)
		}
	}
}

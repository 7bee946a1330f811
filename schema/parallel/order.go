package parallel

import (
	"iter"
	"sync"
)

// MostAlive is how many results InOrder keeps at most with a number of workers,
// 0 meaning as many as there are processors: those that are being made, those that
// wait for one before them, and the one that was handed out.
func MostAlive(workers int) int {
	if workers = Workers(workers); workers == 1 {
		return 1
	}
	return 2 * workers
}

// InOrder calls work for 0 to n-1 on at most `workers` goroutines, 0 meaning as
// many as there are processors, and hands the results out in order. However many
// there are, no more than MostAlive of them are kept: a result that is slow to
// come, or to be used, holds the others up. A result is let go when the next one
// is asked for.
//
// A call that panics makes the loop over the results panic when its turn comes.
// When the loop is left early no call is begun any more, and those that were are
// waited for.
func InOrder[T any](n, workers int, work func(i int) T) iter.Seq2[int, T] {
	if workers = min(Workers(workers), n); workers <= 1 {
		return func(yield func(int, T) bool) {
			for i := range n {
				if !yield(i, work(i)) {
					return
				}
			}
		}
	}
	return func(yield func(int, T) bool) {
		w := window[T]{work: work, next: make(chan int, MostAlive(workers)), made: make([]chan made[T], MostAlive(workers))}
		for i := range w.made {
			w.made[i] = make(chan made[T], 1)
		}
		var wait sync.WaitGroup
		for range workers {
			wait.Go(w.run)
		}
		// Whatever ends the loop, even a panic of its body, the workers end too.
		defer wait.Wait()
		defer w.stop()
		w.loop(n, yield)
	}
}

// window is where results wait for their turn: that of number i in the channel
// i modulo their number. Numbers are handed out ahead, so that no worker waits
// while a result is used.
type window[T any] struct {
	work func(i int) T
	next chan int
	made []chan made[T]
}

// made is a result, or what the call panicked with.
type made[T any] struct {
	value   T
	failed  bool
	mistake any
}

// stop takes back the numbers that no worker has begun.
func (w *window[T]) stop() {
	close(w.next)
	for range w.next {
		continue
	}
}

func (w *window[T]) run() {
	for i := range w.next {
		w.made[i%len(w.made)] <- w.call(i)
	}
}

func (w *window[T]) call(i int) (m made[T]) {
	m.failed = true
	defer func() {
		if m.failed {
			m.mistake = recover()
		}
	}()
	m.value = w.work(i)
	m.failed = false
	return m
}

// loop hands out numbers as long as there is room in the window, and results in
// their order.
func (w *window[T]) loop(n int, yield func(int, T) bool) {
	given := 0
	for i := range n {
		for ; given < n && given-i < len(w.made); given++ {
			w.next <- given
		}
		m := <-w.made[i%len(w.made)]
		if m.failed {
			panic(m.mistake)
		}
		if !yield(i, m.value) {
			return
		}
	}
}

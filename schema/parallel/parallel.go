// Package parallel is the one bounded helper for work on several cores. It owns
// nothing of the trade and may be imported by anything in the project.
package parallel

import (
	"runtime"
	"sync"
)

// Workers is how many goroutines a number asks for: as many as there are processors
// where it is 0 or less.
func Workers(n int) int {
	if n <= 0 {
		return runtime.GOMAXPROCS(0)
	}
	return n
}

// Do calls work for 0 to n-1 on at most `workers` goroutines, 0 meaning as many
// as there are processors, and returns when all calls have. The order of calls
// is not fixed: each stores its result at its own index. A call that panics lets
// the others end; then Do panics in its caller's goroutine, where it can be
// recovered, with what the lowest of them panicked with.
func Do(n, workers int, work func(i int)) {
	if workers = min(Workers(workers), n); workers <= 1 {
		for i := range n {
			work(i)
		}
		return
	}
	var wait sync.WaitGroup
	next := make(chan int)
	var failed mistakes
	for range workers {
		wait.Go(func() {
			for i := range next {
				failed.watch(i, work)
			}
		})
	}
	for i := range n {
		next <- i
	}
	close(next)
	wait.Wait()
	if failed.some {
		panic(failed.value)
	}
}

// mistakes keeps what the lowest of the failed calls panicked with.
type mistakes struct {
	lock  sync.Mutex
	some  bool
	at    int
	value any
}

func (m *mistakes) watch(i int, work func(i int)) {
	defer func() {
		value := recover()
		if value == nil {
			return
		}
		m.lock.Lock()
		defer m.lock.Unlock()
		if !m.some || i < m.at {
			m.some, m.at, m.value = true, i, value
		}
	}()
	work(i)
}

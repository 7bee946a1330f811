// Package parallel is the one bounded helper for work on several cores. It owns
// nothing of the trade and may be imported by anything in the project.
package parallel

import (
	"runtime"
	"sync"
)

// Do calls work for 0 to n-1 on at most `workers` goroutines, 0 meaning as many
// as there are processors, and returns when all calls have. The order of calls
// is not fixed: each stores its result at its own index.
func Do(n, workers int, work func(i int)) {
	if workers <= 0 {
		workers = runtime.GOMAXPROCS(0)
	}
	if workers = min(workers, n); workers <= 1 {
		for i := range n {
			work(i)
		}
		return
	}
	var wait sync.WaitGroup
	next := make(chan int)
	for range workers {
		wait.Go(func() {
			for i := range next {
				work(i)
			}
		})
	}
	for i := range n {
		next <- i
	}
	close(next)
	wait.Wait()
}

package schema

import "runtime"

// workersFor gives how many goroutines serve n pieces of work.
func workersFor(n, wanted int) int {
	if wanted <= 0 {
		wanted = runtime.GOMAXPROCS(0)
	}
	return min(n, wanted)
}

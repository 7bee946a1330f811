package linter

import "runtime"

func defaultWorkers() int { return runtime.GOMAXPROCS(0) }

package linter

import (
	"fmt"
	"runtime"
	"sync"

	"loudlint/schema"
)

// Each reads and judges the designs at the given paths, several at once, and
// hands each over in the order of the paths. It keeps none: whoever lets a
// design go when it was handed over needs the memory of a few designs, however
// many there are. What is handed over is the same for any number of workers.
func Each(paths []string, options Options, handle func(*Judged)) {
	workers := options.Workers
	if workers <= 0 {
		workers = runtime.GOMAXPROCS(0)
	}
	if len(paths) <= 1 || workers == 1 {
		for _, p := range paths {
			handle(read(p, options))
		}
		return
	}
	// Several designs share out the processors among them better than the parts
	// of one do.
	options.Workers = max(1, workers/len(paths))
	workers = min(workers, len(paths))

	// A design may be begun when at most so many before it are not handed over:
	// one slow design must not let the others pile up.
	window := 2 * workers
	slots := make([]chan *Judged, window)
	for i := range slots {
		slots[i] = make(chan *Judged, 1)
	}
	begin := make(chan int, window)
	var wait sync.WaitGroup
	for range workers {
		wait.Go(func() {
			for i := range begin {
				slots[i%window] <- read(paths[i], options)
			}
		})
	}
	for i := range min(window, len(paths)) {
		begin <- i
	}
	for i := range paths {
		handle(<-slots[i%window])
		if next := i + window; next < len(paths) {
			begin <- next
		}
	}
	close(begin)
	wait.Wait()
}

// read reads and judges one design. A mistake of the program that one design
// brings out must not hide what is found in the others.
func read(path string, options Options) (j *Judged) {
	defer func() {
		if mistake := recover(); mistake != nil {
			j = &Judged{Name: path, Err: fmt.Errorf("judge the design %s: a mistake in loudlint itself, please report it with the design: %v", path, mistake)}
		}
	}()
	design, problems, err := schema.Load(path, schema.Options{Folders: options.Folders, Workers: options.Workers})
	if err != nil || len(problems) > 0 {
		return &Judged{Name: path, Err: err, Problems: problems}
	}
	return Judge(design, options)
}

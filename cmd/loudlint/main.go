package main

import (
	"os"
	"os/signal"
	"runtime/debug"
	"syscall"
	"time"

	"golang.org/x/term"

	"loudlint/schema/quantity"
)

// garbagePercent is how much the heap may grow between collections. A check
// reads, judges and ends: most of what it makes lives until then, and looking
// for garbage at the usual 100 % took a quarter to a third of the time of a
// design of 10,000 loudspeakers, for 140 MB less memory at the peak.
const garbagePercent = 400

func main() {
	if os.Getenv("GOGC") == "" {
		debug.SetGCPercent(garbagePercent)
	}
	// A reader that has seen enough closes the pipe. Writing then gives an error,
	// which is passed over, and the exit status still tells what was found.
	signal.Ignore(syscall.SIGPIPE)
	p := Process{Out: os.Stdout, Err: os.Stderr, Env: os.Getenv, Today: quantity.DateOf(time.Now())}
	if fd := int(os.Stdout.Fd()); term.IsTerminal(fd) {
		p.Terminal = true
		if columns, _, err := term.GetSize(fd); err == nil {
			p.Columns = columns
		}
	}
	os.Exit(Main(os.Args[1:], p))
}

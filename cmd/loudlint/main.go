package main

import (
	"os"
	"os/signal"
	"syscall"

	"golang.org/x/term"
)

func main() {
	// A reader that has seen enough closes the pipe. Writing then gives an error,
	// which is passed over, and the exit status still tells what was found.
	signal.Ignore(syscall.SIGPIPE)
	p := Process{Out: os.Stdout, Err: os.Stderr, Env: os.Getenv}
	if fd := int(os.Stdout.Fd()); term.IsTerminal(fd) {
		p.Terminal = true
		if columns, _, err := term.GetSize(fd); err == nil {
			p.Columns = columns
		}
	}
	os.Exit(Main(os.Args[1:], p))
}

package linter

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"sync/atomic"
	"testing"
	"testing/synctest"

	"loudlint/linter/analysis"
	"loudlint/linter/check"
	"loudlint/schema/parallel"
)

// Designs come in the order of their paths for any number of workers, and a
// check that panics over one of them hides no other.
func TestCheckOfMany(t *testing.T) {
	t.Parallel()
	const designs, bad = 40, 7
	paths := halls(t, designs)
	mistaken := &check.Check{ID: "mistaken", Judge: check.EachJob(func(r *check.Report, s *analysis.System) {
		if s.Design.System.Name == fmt.Sprintf("Hall %d", bad) {
			panic("no such hall")
		}
		r.Pass("It is a hall.")
	})}
	for _, workers := range []int{0, 1, 2, 3, 100} {
		var got []string
		for _, j := range Check(paths, Options{Checks: []*check.Check{mistaken}, Workers: workers}).Designs {
			got = append(got, j.Name)
			switch wrong := strings.Contains(j.Name, fmt.Sprintf("%02d.", bad)); {
			case wrong && (j.Err == nil || !strings.Contains(j.Err.Error(), "a mistake in loudlint itself") || !strings.Contains(j.Err.Error(), "no such hall")):
				t.Errorf("%d workers, %s: %v", workers, j.Name, j.Err)
			case !wrong && (j.Err != nil || len(j.Outcomes) != 1):
				t.Errorf("%d workers, %s: %v, %d outcomes", workers, j.Name, j.Err, len(j.Outcomes))
			}
		}
		for i, name := range got {
			if name != filepath.ToSlash(paths[i]) && name != paths[i] {
				t.Errorf("%d workers: %s came as number %d", workers, name, i)
			}
		}
		if len(got) != designs {
			t.Errorf("%d workers: %d designs", workers, len(got))
		}
	}
}

// halls writes designs that say no more than their name.
func halls(t *testing.T, designs int) []string {
	t.Helper()
	folder := t.TempDir()
	paths := make([]string, designs)
	for i := range paths {
		paths[i] = filepath.Join(folder, fmt.Sprintf("hall %02d.pa.hcl", i))
		if err := os.WriteFile(paths[i], fmt.Appendf(nil, "system \"Hall %d\" {}\n", i), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	return paths
}

// However many designs there are, few are kept at once. Before each is let go,
// everything is judged that can be judged ahead.
func TestEachKeepsFew(t *testing.T) {
	t.Parallel()
	paths := halls(t, 40)
	for _, workers := range []int{1, 2, 5} {
		synctest.Test(t, func(t *testing.T) {
			var alive atomic.Int32
			counting := &check.Check{ID: "counting", Judge: check.EachJob(func(r *check.Report, _ *analysis.System) {
				alive.Add(1)
				r.Pass("It is a hall.")
			})}
			most := 0
			for range Each(paths, Options{Checks: []*check.Check{counting}, Workers: workers}) {
				synctest.Wait() // until no worker can go on
				most = max(most, int(alive.Load()))
				alive.Add(-1)
			}
			if want := parallel.MostAlive(workers); most != want {
				t.Errorf("%d workers: %d designs were kept at once, want %d", workers, most, want)
			}
		})
	}
}

package main

import (
	"fmt"
	"io"
	"runtime/debug"
	"strings"

	"loudlint/cmd/loudlint/internal/cli"
)

func versionCommand(p *Process) *cli.Command {
	return &cli.Command{
		Name:    "version",
		Summary: "say which build this is",
		About:   []string{"Says what the Go toolchain wrote into the program when it was built, and nothing else."},
		Run: func([]string) int {
			return p.say(p.Out, func(w io.Writer) error {
				_, err := io.WriteString(w, versionOf(readBuild()))
				return err
			})
		},
	}
}

// readBuild gives what is known of the build, or nil.
func readBuild() *debug.BuildInfo {
	if info, ok := debug.ReadBuildInfo(); ok {
		return info
	}
	return nil
}

// develVersion is what the toolchain writes when it knows no version.
const develVersion = "(devel)"

// releaseOf gives the version of the module, "" when it is not known.
func releaseOf(info *debug.BuildInfo) string {
	if info == nil || info.Main.Version == develVersion {
		return ""
	}
	return info.Main.Version
}

func versionOf(info *debug.BuildInfo) string {
	if info == nil {
		return name + ", nothing known of its build\n"
	}
	release := releaseOf(info)
	if release == "" {
		release = "without a version"
	}
	var b strings.Builder
	fmt.Fprintf(&b, "%s %s\n", name, release)
	settings := map[string]string{}
	for _, s := range info.Settings {
		settings[s.Key] = s.Value
	}
	if revision := settings["vcs.revision"]; revision != "" {
		fmt.Fprintf(&b, "revision %s", revision)
		if settings["vcs.modified"] == "true" {
			b.WriteString(", changed since")
		}
		b.WriteByte('\n')
	}
	fmt.Fprintf(&b, "built with %s", info.GoVersion)
	if system, machine := settings["GOOS"], settings["GOARCH"]; system != "" && machine != "" {
		fmt.Fprintf(&b, " for %s/%s", system, machine)
	}
	b.WriteByte('\n')
	return b.String()
}

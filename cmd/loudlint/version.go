package main

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"io"
	"os"
	"runtime/debug"
	"strings"
	"sync"

	"loudlint/cmd/loudlint/internal/cli"
)

func versionCommand(p *Process) *cli.Command {
	return &cli.Command{
		Name:    "version",
		Summary: "say which build this is",
		About:   []string{"Says what the Go toolchain wrote into the program when it was built: the version, or else the revision. Where it wrote neither, the digest of the program tells one build from another."},
		Run: func([]string) int {
			return p.say(p.Out, func(w io.Writer) error {
				_, err := io.WriteString(w, versionOf(readBuild(), sync.OnceValue(programDigest))) // it is said twice
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

// toolName is the program with what tells this build of it from others. It may
// read the program's file.
func toolName() string {
	return name + " " + identity(readBuild(), programDigest)
}

// programDigest is the SHA-256 of the program's file in hexadecimal digits, "" when
// it cannot be read.
func programDigest() string {
	path, err := os.Executable()
	if err != nil {
		return ""
	}
	f, err := os.Open(path)
	if err != nil {
		return ""
	}
	defer func() { _ = f.Close() }() // it was only read
	h := sha256.New()
	if _, err := io.Copy(h, f); err != nil {
		return ""
	}
	return hex.EncodeToString(h.Sum(nil))
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

// identity tells a build from others by the best that is known: its version, the
// revision it was built from, or the digest of its file.
func identity(info *debug.BuildInfo, digest func() string) string {
	if release := releaseOf(info); release != "" {
		return release
	}
	const enough = 12 // digits to tell one from another
	settings := settingsOf(info)
	if revision := settings["vcs.revision"]; revision != "" {
		return "revision " + revision[:min(len(revision), enough)] + sinceOf(settings)
	}
	if sum := digest(); sum != "" {
		return "build " + sum[:min(len(sum), enough)]
	}
	return "of an unknown build"
}

// sinceOf says of when a revision is, and whether the text had been changed.
func sinceOf(settings map[string]string) string {
	var text string
	if day, _, ok := strings.Cut(settings["vcs.time"], "T"); ok {
		text = " of " + day
	}
	if settings["vcs.modified"] == "true" {
		text += ", changed since"
	}
	return text
}

func settingsOf(info *debug.BuildInfo) map[string]string {
	settings := map[string]string{}
	if info != nil {
		for _, s := range info.Settings {
			settings[s.Key] = s.Value
		}
	}
	return settings
}

func versionOf(info *debug.BuildInfo, digest func() string) string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s %s\n", name, identity(info, digest))
	settings := settingsOf(info)
	if revision := settings["vcs.revision"]; revision != "" {
		fmt.Fprintf(&b, "revision %s%s\n", revision, sinceOf(settings))
	} else if releaseOf(info) == "" {
		if sum := digest(); sum != "" {
			fmt.Fprintf(&b, "SHA-256 of the program %s\n", sum)
		}
	}
	if info == nil {
		return b.String()
	}
	fmt.Fprintf(&b, "built with %s", info.GoVersion)
	if system, machine := settings["GOOS"], settings["GOARCH"]; system != "" && machine != "" {
		fmt.Fprintf(&b, " for %s/%s", system, machine)
	}
	b.WriteByte('\n')
	return b.String()
}

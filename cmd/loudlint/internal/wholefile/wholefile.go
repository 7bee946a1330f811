// Package wholefile writes files whole or not at all, so that whoever reads one
// never finds half of it, and an old one stays when writing fails.
//
// It knows nothing of what is written. Commands that write files import it.
package wholefile

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strconv"
)

// Write writes what the function writes into a new file beside the named one,
// and puts it in its place when all of it is on the disk. The permissions of a
// file that was there before are kept, and a link to it stays a link. Something
// that is no ordinary file, such as a pipe, is written to directly.
func Write(name string, write func(io.Writer) error) error {
	target, mode, err := targetOf(name)
	if err != nil {
		return err
	}
	if mode != 0 && !mode.IsRegular() {
		return straight(target, write)
	}
	part, err := create(target)
	if err != nil {
		return fmt.Errorf("write the file %s: %w", name, Plain(err))
	}
	if err := fill(part, mode, write); err != nil {
		return errors.Join(fmt.Errorf("write the file %s: %w", name, Plain(err)), remove(part.Name()))
	}
	if err := os.Rename(part.Name(), target); err != nil {
		return errors.Join(fmt.Errorf("write the file %s: %w", name, Plain(err)), remove(part.Name()))
	}
	return nil
}

// targetOf follows links, and tells the mode of what is there, 0 for nothing.
func targetOf(name string) (string, fs.FileMode, error) {
	target, err := filepath.EvalSymlinks(name)
	if errors.Is(err, fs.ErrNotExist) {
		return name, 0, nil
	}
	if err != nil {
		return "", 0, fmt.Errorf("write the file %s: %w", name, Plain(err))
	}
	info, err := os.Stat(target)
	switch {
	case err != nil:
		return "", 0, fmt.Errorf("write the file %s: %w", name, Plain(err))
	case info.IsDir():
		return "", 0, fmt.Errorf("write the file %s: it is a folder", name)
	}
	return target, info.Mode(), nil
}

func straight(name string, write func(io.Writer) error) error {
	f, err := os.OpenFile(name, os.O_WRONLY, 0)
	if err != nil {
		return fmt.Errorf("write to %s: %w", name, Plain(err))
	}
	if err := errors.Join(write(f), f.Close()); err != nil {
		return fmt.Errorf("write to %s: %w", name, err)
	}
	return nil
}

// create makes a file beside the target whose name is not taken yet. It gets the
// permissions new files get.
func create(target string) (*os.File, error) {
	folder, base := filepath.Split(target)
	const attempts = 100
	for i := range attempts {
		f, err := os.OpenFile(filepath.Join(folder, "."+base+"."+strconv.Itoa(i)+".part"), os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
		if !errors.Is(err, fs.ErrExist) {
			return f, err
		}
	}
	return nil, fmt.Errorf("%d unfinished files of this name lie there already", attempts)
}

func fill(part *os.File, mode fs.FileMode, write func(io.Writer) error) error {
	err := write(part)
	if err == nil && mode != 0 {
		err = part.Chmod(mode.Perm())
	}
	if err == nil {
		err = part.Sync()
	}
	return errors.Join(err, part.Close())
}

func remove(name string) error {
	if err := os.Remove(name); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return fmt.Errorf("remove the unfinished file %s: %w", name, Plain(err))
	}
	return nil
}

// Plain leaves the system's reason: the name stands in front already, and the
// call is of no use to a reader.
func Plain(err error) error {
	if e, ok := errors.AsType[*fs.PathError](err); ok {
		return e.Err
	}
	if e, ok := errors.AsType[*os.LinkError](err); ok {
		return e.Err
	}
	return err
}

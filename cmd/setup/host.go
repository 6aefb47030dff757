package main

import (
	"context"
	"errors"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"syscall"
	"time"
)

// host is the machine that setup really runs on.
type host struct{}

// endPatience is how long an interrupted program may take to clear up.
const endPatience = 10 * time.Second

func (host) system() string { return runtime.GOOS }

func (host) root() bool { return os.Geteuid() == 0 }

func (host) terminal() bool {
	in, err := os.Stdin.Stat()
	if err != nil || in.Mode()&os.ModeCharDevice == 0 {
		return false
	}
	null, err := os.Stat(os.DevNull)
	return err != nil || !os.SameFile(in, null) // the null device is a character device too
}

func (host) env(name string) string { return os.Getenv(name) }

func (host) finds(program string) bool {
	_, err := exec.LookPath(program)
	return err == nil
}

func (host) readFile(path string) (string, error) {
	text, err := os.ReadFile(path)
	return string(text), err
}

func (host) absolute(path string) (string, error) { return filepath.Abs(path) }

func (host) cacheDir() (string, error) { return os.UserCacheDir() }

// answers does without package net, which wants a C compiler wherever there is
// one, and that one may lack its headers still.
func (host) answers(socket string) bool {
	end, err := syscall.Socket(syscall.AF_UNIX, syscall.SOCK_STREAM, 0)
	if err != nil {
		return false
	}
	defer syscall.Close(end)
	return syscall.Connect(end, &syscall.SockaddrUnix{Name: socket}) == nil
}

func (host) output(ctx context.Context, c command) (string, error) {
	text, err := c.start(ctx).Output()
	return string(text), err
}

func (host) run(ctx context.Context, c command) (int, error) {
	cmd := c.start(ctx)
	cmd.Stdin, cmd.Stdout, cmd.Stderr = os.Stdin, os.Stdout, os.Stderr
	err := cmd.Run()
	if ctx.Err() != nil {
		return exitFailed, nil // it was told to stop, so it needs no words
	}
	var ended *exec.ExitError
	if errors.As(err, &ended) {
		// A program ended by a signal has no exit code of its own.
		return max(ended.ExitCode(), exitFailed), nil
	}
	return 0, err
}

// start makes the command ready to run. When setup is told to stop, the
// program is asked to stop first, so that it can clear up.
func (c command) start(ctx context.Context) *exec.Cmd {
	cmd := exec.CommandContext(ctx, c.words[0], c.words[1:]...)
	cmd.Dir = c.dir
	cmd.Env = append(os.Environ(), c.vars...)
	cmd.Cancel = func() error { return cmd.Process.Signal(os.Interrupt) }
	cmd.WaitDelay = endPatience
	return cmd
}

package main

import (
	"bufio"
	"bytes"
	"context"
	"fmt"
	"os"
	"os/exec"
	"strings"
	"syscall"
	"time"
)

const (
	// virtualScreen is as large as the largest window that the tests open.
	virtualScreen = "1600x1000x24"
	// virtualPatience is how long a virtual display may take to start on a
	// busy machine.
	virtualPatience = 60 * time.Second
)

// virtualDisplay starts Xvfb on a number that it chooses itself, so that it
// disturbs no other display.
func (host) virtualDisplay(ctx context.Context) (string, func(), error) {
	read, write, err := os.Pipe()
	if err != nil {
		return "", nil, err
	}
	defer read.Close()

	ctx, cancel := context.WithCancel(ctx)
	// Without -noreset it starts afresh whenever the last window closes, and
	// turns away the next test's that comes meanwhile.
	server := exec.CommandContext(ctx, "Xvfb", "-displayfd", "3", "-screen", "0", virtualScreen, "-nolisten", "tcp", "-noreset")
	server.Cancel = func() error { return server.Process.Signal(syscall.SIGTERM) }
	server.WaitDelay = endPatience
	server.ExtraFiles = []*os.File{write} // becomes descriptor 3
	var complaint bytes.Buffer
	server.Stderr = &complaint

	err = server.Start()
	write.Close() // the server has its own; with ours open its death would go unseen
	if err != nil {
		cancel()
		return "", nil, err
	}
	end := func() {
		cancel()
		_ = server.Wait() // it was told to end, so how it ended says nothing
	}

	_ = read.SetReadDeadline(time.Now().Add(virtualPatience)) // without it a hung server would only be waited for longer
	number, err := bufio.NewReader(read).ReadString('\n')
	if err != nil {
		end()
		return "", nil, fmt.Errorf("no answer from Xvfb: %s", strings.TrimSpace(complaint.String()))
	}
	return ":" + strings.TrimSpace(number), end, nil
}

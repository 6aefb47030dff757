package diskfile

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// Item is one thing in a folder.
type Item struct {
	Name   string
	Folder bool
}

// List returns what lies in a folder that a maker may choose: first its folders,
// then the files whose names end in suffix ("": none), each by name in the order
// of a dictionary. What hides behind a point at its beginning is left out. The
// error is the operating system's.
func List(folder, suffix string) ([]Item, error) {
	entries, err := os.ReadDir(folder)
	if err != nil {
		return nil, err
	}
	var items []Item
	for _, e := range entries {
		if strings.HasPrefix(e.Name(), ".") {
			continue
		}
		item := Item{Name: e.Name(), Folder: IsFolder(filepath.Join(folder, e.Name()))}
		if item.Folder || suffix != "" && strings.EqualFold(filepath.Ext(item.Name), suffix) {
			items = append(items, item)
		}
	}
	slices.SortStableFunc(items, func(a, b Item) int {
		if a.Folder != b.Folder {
			if a.Folder {
				return -1
			}
			return 1
		}
		return strings.Compare(strings.ToLower(a.Name), strings.ToLower(b.Name))
	})
	return items, nil
}

// IsFolder reports whether a path leads to a folder.
func IsFolder(path string) bool {
	info, err := os.Stat(path)
	return err == nil && info.IsDir()
}

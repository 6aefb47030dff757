package export

import (
	"archive/zip"
	"context"
	"io"
	"path/filepath"
	"strings"
	"time"
)

// putZip writes files into a zip file as [WriteFile] does, in a folder of the
// file's name, so that unpacking it makes one folder.
func putZip(ctx context.Context, q BundleRequest, files []bundled) error {
	base := filepath.Base(q.To)
	folder := strings.TrimSuffix(base, filepath.Ext(base))
	return WriteFile(q.To, func(w io.Writer) error {
		z := zip.NewWriter(w)
		for _, f := range files {
			if err := ctx.Err(); err != nil {
				return err
			}
			entry, err := z.CreateHeader(&zip.FileHeader{
				Name: folder + "/" + f.name, Method: zip.Deflate, Modified: stamp(q.Date),
			})
			if err != nil {
				return err
			}
			if _, err := entry.Write(f.data); err != nil {
				return err
			}
		}
		return z.Close()
	})
}

// stamp returns the time that a zip file's entries bear: noon of the date that
// the caller gives, or the oldest a zip file can say, so that equal requests
// give equal files.
func stamp(date string) time.Time {
	day, err := time.Parse(time.DateOnly, date)
	if err != nil {
		day = time.Date(1980, time.January, 1, 0, 0, 0, 0, time.UTC)
	}
	return day.Add(12 * time.Hour)
}

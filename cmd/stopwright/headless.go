//go:build ci

package main

import "errors"

// ready says why no window can be shown: this build paints only pictures.
func ready(shots bool) error {
	if !shots {
		return errors.New("this build has no display; it only writes pictures, with -shots DIR")
	}
	return nil
}

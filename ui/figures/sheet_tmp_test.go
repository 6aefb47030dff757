package figures

import (
	"image"
	"image/draw"
	"image/png"
	"os"
	"sort"
	"stopwright/detent/plan"
	"stopwright/ui/ink"
	"testing"
)

func TestTmpSheet(t *testing.T) {
	var paths []string
	for k := range home {
		paths = append(paths, k)
	}
	for k := range alone {
		paths = append(paths, k)
	}
	for k := range clearance {
		paths = append(paths, k)
	}
	sort.Strings(paths)
	const w, h = 292, 168
	for n, pal := range map[string]ink.Palette{"light": ink.Light, "bw": ink.BlackOnWhite} {
		for _, in := range []plan.Part{plan.PartTurntable, plan.PartBase} {
			out := image.NewRGBA(image.Rect(0, 0, 4*(w+6), (h+6)*((len(paths)+3)/4)))
			for i, k := range paths {
				p := plan.Default()
				p.Arrangement.CatchIn = in
				if i%2 == 1 {
					p.Seat.Form = plan.Countersunk
				}
				f, _ := Of(p, k, "4.5 mm")
				c := ink.New(w, h)
				c.Clear(pal.Paper)
				ink.Paint(c, f.Drawing, ink.Fit(f.Bounds, w, h, 4), Style(pal))
				x, y := (i%4)*(w+6), (i/4)*(h+6)
				draw.Draw(out, image.Rect(x, y, x+w, y+h), c.Img, image.Point{}, draw.Src)
			}
			o, _ := os.Create("/tmp/units-shots/fig-" + n + "-" + string(in) + ".png")
			png.Encode(o, out)
			o.Close()
		}
	}
	t.Log(paths)
}

package dxf

import (
	"github.com/yofu/dxf/format"
	"github.com/yofu/dxf/handle"
	"github.com/yofu/dxf/object"
)

// objects returns the OBJECTS section: the root dictionary, which comes first,
// the plot styles and the groups that every file must have. It also returns the
// plot style that layers refer to.
func objects() (object.Objects, handle.Handler) {
	root := &dictionary{}
	groups := &dictionary{owner: root}
	styles, normal := object.NewAcDbDictionaryWDFLT(root)
	root.entries = []entry{
		{"ACAD_GROUP", groups},
		{"ACAD_PLOTSTYLENAME", styles},
	}
	return object.Objects{root, groups, styles, normal}, normal
}

// dictionary names objects. Unlike the library's own it says who owns it, and
// keeps its order.
type dictionary struct {
	handle  int
	owner   *dictionary // nil for the root
	entries []entry
}

type entry struct {
	name string
	to   handle.Handler
}

// IsObject marks an object of the section.
func (d *dictionary) IsObject() bool { return true }

// Handle returns the number others refer to it by; of no dictionary, 0.
func (d *dictionary) Handle() int {
	if d == nil {
		return 0
	}
	return d.handle
}

// SetHandle takes the next handle.
func (d *dictionary) SetHandle(next *int) {
	d.handle = *next
	*next++
}

// Format writes the object.
func (d *dictionary) Format(f format.Formatter) {
	f.WriteString(0, "DICTIONARY")
	f.WriteHex(5, d.handle)
	f.WriteHex(330, d.owner.Handle())
	f.WriteString(100, "AcDbDictionary")
	f.WriteInt(281, 1) // a name met twice keeps the first object
	for _, e := range d.entries {
		f.WriteString(3, e.name)
		f.WriteHex(350, e.to.Handle())
	}
}

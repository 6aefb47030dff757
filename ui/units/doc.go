// Package units says how the window shows lengths and angles and how it reads
// those typed into it. A style is a setting of the window: lengths are kept in
// millimetres and angles in degrees whatever it is. It needs no window toolkit.
package units

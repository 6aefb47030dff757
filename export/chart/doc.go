// Package chart makes the drilling chart: the sheet that hangs at the pillar
// drill. It holds what the chart says ([New]), as a table for a spreadsheet
// ([WriteCSV]) and as printed pages ([Pages]), which any writer of pages can
// turn into a file.
//
// Everything is as seen at the drill: a turntable lies underside up, with left
// and right exchanged; base and collar lie top up. Azimuths are clockwise from
// the direction away from the operator, in (-180, 180]. Lengths are mm, angles
// degrees.
package chart

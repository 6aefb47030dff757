package stock

import "slices"

// Ball is a steel ball of a standard size.
type Ball struct {
	System      System  // Metric or Fraction
	Designation string  // 6, 1/4
	MM          float64 // diameter, mm
	Evidence
}

func (b Ball) size() float64  { return b.MM }
func (b Ball) series() System { return b.System }

// What is known of the sizes of balls. The tables of ISO 3290-1 themselves
// were not opened.
var (
	ballInch   = Evidence{"inch size, by definition; listed after ISO 3290", Exact}
	ballListed = Evidence{"nominal sizes listed after ISO 3290", Transcribed}
	ballMemory = Evidence{"ISO 3290-1", Memory}
)

// balls holds the sizes from 1.5 to 16 mm, the smallest first. There is none
// between 4.5 and 5 mm but 3/16 inch.
var balls = []Ball{
	{Metric, "1.5", 1.5, ballListed},
	{Fraction, "1/16", 1.5875, ballInch},
	{Metric, "2", 2, ballListed},
	{Fraction, "3/32", 2.38125, ballInch},
	{Metric, "2.5", 2.5, ballListed},
	{Metric, "3", 3, ballListed},
	{Fraction, "1/8", 3.175, ballInch},
	{Metric, "3.5", 3.5, ballListed},
	{Fraction, "5/32", 3.96875, ballInch},
	{Metric, "4", 4, ballListed},
	{Metric, "4.5", 4.5, ballListed},
	{Fraction, "3/16", 4.7625, ballInch},
	{Metric, "5", 5, ballListed},
	{Metric, "5.5", 5.5, ballMemory},
	{Fraction, "7/32", 5.55625, ballInch},
	{Metric, "6", 6, ballListed},
	{Fraction, "1/4", 6.35, ballInch},
	{Metric, "6.5", 6.5, ballMemory},
	{Metric, "7", 7, ballMemory},
	{Fraction, "9/32", 7.14375, ballInch},
	{Metric, "7.5", 7.5, ballMemory},
	{Fraction, "5/16", 7.9375, ballInch},
	{Metric, "8", 8, ballMemory},
	{Metric, "8.5", 8.5, ballMemory},
	{Fraction, "11/32", 8.73125, ballInch},
	{Metric, "9", 9, ballMemory},
	{Metric, "9.5", 9.5, ballMemory},
	{Fraction, "3/8", 9.525, ballInch},
	{Metric, "10", 10, ballListed},
	{Fraction, "13/32", 10.31875, ballInch},
	{Metric, "11", 11, ballMemory},
	{Fraction, "7/16", 11.1125, ballInch},
	{Fraction, "15/32", 11.90625, ballInch},
	{Metric, "12", 12, ballListed},
	{Fraction, "1/2", 12.7, ballInch},
	{Metric, "13", 13, ballMemory},
	{Metric, "14", 14, ballMemory},
	{Fraction, "9/16", 14.2875, ballInch},
	{Metric, "15", 15, ballListed},
	{Fraction, "5/8", 15.875, ballInch},
	{Metric, "16", 16, ballListed},
}

// Balls returns the standard balls from 1.5 to 16 mm, the smallest first.
func Balls() []Ball { return slices.Clone(balls) }

// NearestBall returns the ball nearest in diameter to mm among the systems
// given, or among all. Of two as near it takes the smaller. It is false where
// mm is not a number or no such system has balls.
func NearestBall(mm float64, systems ...System) (Ball, bool) {
	return nearest(balls, mm, systems)
}

// BallGrade says how far the diameters of balls may differ.
type BallGrade struct {
	Name     string
	OneBall  float64 // between the diameters of one ball, mm
	OneBatch float64 // between the balls of one lot, mm
	Evidence
}

// BallGrades returns the grades sold for common use.
func BallGrades() []BallGrade {
	return []BallGrade{{"G100", 0.0025, 0.005, Evidence{"grades listed after ISO 3290", Transcribed}}}
}

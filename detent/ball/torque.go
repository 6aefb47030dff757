package ball

import "math"

// Riding is a ball on the face, between stops.
type Riding struct {
	Force  float64 // of the spring, N
	Torque float64 // with which its friction resists turning, N·m
}

// Riding returns what the ball does on the face. It is false for a ball that
// cannot reach the face.
func (c *Click) Riding() (Riding, bool) {
	if c.state == CannotReach {
		return Riding{}, false
	}
	f := c.force(c.seat.r)
	return Riding{Force: f, Torque: c.setup.Friction * f * c.arm}, true
}

// Torques are those of one stop, of the ball alone.
type Torques struct {
	// Holding is the greatest torque on the way out of the stop, N·m, and
	// HoldingAt the offset at which it is reached, mm.
	Holding, HoldingAt float64

	// Centring is the torque with which the ball pulls itself home where the
	// seat begins to lift it, N·m; negative where friction holds it there.
	Centring float64

	// Energy is what the spring takes up on the way out, mJ, without friction.
	Energy float64
}

// Torques returns the torques of one stop. It is false unless the ball clicks.
func (c *Click) Torques() (Torques, bool) {
	if c.state != Clicks {
		return Torques{}, false
	}
	home := c.seat.touch(c.play)
	t := Torques{
		Centring: c.arm * c.home(home),
		Energy:   c.setup.Spring.Work(c.standing(c.seat.r), c.standing(max(home.z, c.limit))),
	}
	force, at := c.hardest()
	t.Holding, t.HoldingAt = c.arm*force, at
	return t, true
}

// standing returns how far the ball stands out of its own part's face with its
// centre at a height over the other.
func (c *Click) standing(z float64) float64 { return c.setup.FaceGap + c.seat.r - z }

// out returns the sideways force (N) that lifts the ball at a contact:
// F·tan(α+φ), tan φ being the friction, for one that does not lock.
func (c *Click) out(t touch) float64 {
	mu := c.setup.Friction
	return c.force(t.z) * (t.sin + mu*t.cos) / (t.cos - mu*t.sin)
}

// home returns the sideways force (N) with which the ball at a contact goes
// home: F·tan(α-φ).
func (c *Click) home(t touch) float64 {
	mu := c.setup.Friction
	return c.force(t.z) * (t.sin - mu*t.cos) / (t.cos + mu*t.sin)
}

// lockSlack is the cosine of α+φ, but for a factor, that counts as none: it
// stands for a force a thousand million times the spring's.
const lockSlack = 1e-9

// locked reports whether α+φ reaches 90° at a contact.
func (c *Click) locked(t touch) bool { return t.cos-c.setup.Friction*t.sin <= lockSlack }

// hardest returns the greatest force out of the stop (N) and where it is
// reached (mm).
func (c *Click) hardest() (force, at float64) {
	force = math.Inf(-1)
	for i := range c.seat.spans {
		from, to := max(c.seat.spans[i].from, c.play), c.seat.end(i)
		if from >= to {
			continue
		}
		f, s := peak(from, to, func(s float64) float64 { return c.out(c.seat.inSpan(i, s)) })
		if f > force {
			force, at = f, s
		}
	}
	return force, at
}

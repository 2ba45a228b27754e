// The published equations are in inches and pounds. These bring them to SI; exact by definition (NIST SP 811, 2008, Appendix B.8).

/** One inch, m. */
export const inch = 0.0254
/** One pound-force, N. */
export const poundForce = 4.4482216152605
/** One pound-force per square inch, Pa. */
export const psi = poundForce / inch ** 2
/** A thousand of them, Pa. */
export const ksi = 1000 * psi

// Generated from schema/job/1 by `npm run generate`.
// Where the format has lists, as patterns of places.
export const lists: readonly string[] = [
  "/fabrics",
  "/fabrics/*/fibres",
  "/hardware",
  "/rooms",
  "/rooms/*/windows",
  "/rooms/*/windows/*/walls",
  "/rooms/*/windows/*/walls/*/openings",
  "/rooms/*/windows/*/floor",
  "/rooms/*/windows/*/treatments",
  "/rooms/*/windows/*/treatments/*/panels"
]

// Generated from schema/job/1 by `npm run generate`.
// Where the format has lists, as patterns of places.
export const lists: readonly string[] = [
  "/job/handOver/spares",
  "/catalogues",
  "/fabrics",
  "/fabrics/*/fibres",
  "/hardware",
  "/fasteners",
  "/rooms",
  "/rooms/*/mayDiffer",
  "/rooms/*/windows",
  "/rooms/*/windows/*/walls",
  "/rooms/*/windows/*/walls/*/studs",
  "/rooms/*/windows/*/walls/*/obstacles",
  "/rooms/*/windows/*/walls/*/openings",
  "/rooms/*/windows/*/walls/*/openings/*/head",
  "/rooms/*/windows/*/floor",
  "/rooms/*/windows/*/ceiling",
  "/rooms/*/windows/*/treatments",
  "/rooms/*/windows/*/treatments/*/openings",
  "/rooms/*/windows/*/treatments/*/rod/splices",
  "/rooms/*/windows/*/treatments/*/rod/supports",
  "/rooms/*/windows/*/treatments/*/panels",
  "/rooms/*/windows/*/treatments/*/panels/*/seams",
  "/rooms/*/windows/*/treatments/*/fasteners"
]

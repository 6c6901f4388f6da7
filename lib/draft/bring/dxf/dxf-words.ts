/** Elements of a DXF file that are lines of a plan; what else stands in it is counted and passed over. */
export const LINE_ELEMENTS: ReadonlySet<string> = new Set([
  "LINE",
  "LWPOLYLINE",
  "POLYLINE",
  "ARC",
  "CIRCLE",
  "ELLIPSE",
  "SPLINE",
  "INSERT",
]);

const PLAIN_WORDS: Readonly<Record<string, string>> = {
  TEXT: "pieces of lettering",
  MTEXT: "pieces of lettering",
  ATTRIB: "pieces of lettering",
  ATTDEF: "pieces of lettering",
  DIMENSION: "dimensions",
  ARC_DIMENSION: "dimensions",
  LARGE_RADIAL_DIMENSION: "dimensions",
  LEADER: "leaders",
  MLEADER: "leaders",
  MULTILEADER: "leaders",
  HATCH: "hatchings",
  MPOLYGON: "hatchings",
  SOLID: "filled areas",
  TRACE: "filled areas",
  WIPEOUT: "filled areas",
  "3DFACE": "faces of solids",
  MESH: "faces of solids",
  "3DSOLID": "solids",
  BODY: "solids",
  REGION: "solids",
  SURFACE: "solids",
  POINT: "single points",
  VIEWPORT: "windows of a paper layout",
  IMAGE: "pictures",
  OLE2FRAME: "pictures",
  RAY: "endless lines",
  XLINE: "endless lines",
  MLINE: "multiple lines",
  SHAPE: "shapes of a font",
  ACAD_TABLE: "tables",
};

/** What an element is called in the list of what was passed over. */
export function dxfElementWords(type: string): string {
  const shown = type.length > 30 ? `${type.slice(0, 30)}…` : type;
  return PLAIN_WORDS[type] ?? `elements of the kind "${shown}"`;
}

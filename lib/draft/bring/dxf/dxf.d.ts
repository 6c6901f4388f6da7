/** The part that is used of the package `dxf`, which has no types of its own. Numbers may be NaN where a file has none. */
declare module "dxf" {
  type Place = { x?: number; y?: number; z?: number };
  type Common = {
    layer?: string;
    extrusionX?: number;
    extrusionY?: number;
    extrusionZ?: number;
  };
  type Vertex = { x?: number; y?: number; bulge?: number };

  export type DxfEntity = Common &
    (
      | { type: "LINE"; start: Place; end: Place }
      | { type: "LWPOLYLINE"; vertices: Vertex[]; closed?: boolean }
      | { type: "POLYLINE"; vertices: Vertex[]; closed?: boolean; polygonMesh?: boolean; polyfaceMesh?: boolean }
      | { type: "ARC"; x?: number; y?: number; r?: number; startAngle?: number; endAngle?: number }
      | { type: "CIRCLE"; x?: number; y?: number; r?: number }
      | {
          type: "ELLIPSE";
          x?: number;
          y?: number;
          majorX?: number;
          majorY?: number;
          axisRatio?: number;
          startAngle?: number;
          endAngle?: number;
        }
      | {
          type: "SPLINE";
          controlPoints: Place[];
          knots: number[];
          weights?: number[];
          degree?: number;
          closed?: boolean;
        }
      | {
          type: "INSERT";
          block?: string;
          x?: number;
          y?: number;
          scaleX?: number;
          scaleY?: number;
          rotation?: number;
          columnCount?: number;
          rowCount?: number;
          columnSpacing?: number;
          rowSpacing?: number;
        }
    );

  export type DxfBlock = { name?: string; x?: number; y?: number; xref?: string; entities?: DxfEntity[] };

  export function parseString(text: string): {
    header: { insUnits?: number; measurement?: number };
    blocks: DxfBlock[];
    entities: DxfEntity[];
  };
}

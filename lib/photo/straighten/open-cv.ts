/** The part of OpenCV's JavaScript build that finds markers; whoever loads the package passes it in. */
export type OpenCv = {
  readonly Mat: new (rows?: number, columns?: number, type?: number) => CvMat;
  readonly MatVector: new () => CvMatVector;
  readonly CV_8UC1: number;
  getPredefinedDictionary(id: number): CvObject;
  readonly DICT_APRILTAG_36h11: number;
  readonly aruco_DetectorParameters: new () => CvObject & {
    cornerRefinementMethod: number;
    minMarkerPerimeterRate: number;
  };
  readonly aruco_RefineParameters: new (
    minRepDistance: number,
    errorCorrectionRate: number,
    checkAllOrders: boolean,
  ) => CvObject;
  readonly aruco_ArucoDetector: new (
    dictionary: CvObject,
    parameters: CvObject,
    refine: CvObject,
  ) => CvObject & { detectMarkers(image: CvMat, corners: CvMatVector, ids: CvMat): void };
};

/** What lives in OpenCV's own memory until it is deleted. */
type CvObject = { delete(): void };
type CvMat = CvObject & { readonly data: Uint8Array; readonly data32S: Int32Array; readonly data32F: Float32Array };
type CvMatVector = CvObject & { size(): number; get(i: number): CvMat };

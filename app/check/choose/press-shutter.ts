/** A camera that takes a photograph finer than its live view; not every browser has one. */
type Still = { takePhoto(): Promise<Blob> };
type StillOf = new (track: MediaStreamTrack) => Still;

const JPEG_QUALITY = 0.92;
/** A camera that has not answered by then gets no longer, milliseconds. */
const PATIENCE_MS = 4000;

/** A photograph: the camera's own where it gives one, else the frame that is on view; null where there is none. */
export async function pressShutter(video: HTMLVideoElement, stream: MediaStream): Promise<Blob | null> {
  const [track] = stream.getVideoTracks();
  const Camera = (window as { readonly ImageCapture?: StillOf }).ImageCapture;
  if (track && Camera) {
    const still = await inTime(new Camera(track).takePhoto()).catch(() => null);
    if (still) return still;
  }
  return frameOf(video);
}

function inTime<T>(asked: Promise<T>): Promise<T> {
  return Promise.race([
    asked,
    new Promise<never>((_, reject) => setTimeout(() => reject(new Error("The camera did not answer.")), PATIENCE_MS)),
  ]);
}

function frameOf(video: HTMLVideoElement): Promise<Blob | null> {
  const canvas = document.createElement("canvas");
  canvas.width = video.videoWidth;
  canvas.height = video.videoHeight;
  const context = canvas.getContext("2d");
  if (!context || canvas.width === 0) return Promise.resolve(null);
  context.drawImage(video, 0, 0);
  return new Promise((resolve) => canvas.toBlob(resolve, "image/jpeg", JPEG_QUALITY));
}

import type { Shown } from "@/app/_photo/worker/messages";
import type { ShownPhoto } from "./check-store";

/** A photograph as the page shows and keeps it. */
export async function showPhoto({ picture, ...size }: Shown): Promise<ShownPhoto> {
  return { ...size, address: await asAddress(picture) };
}

/** A picture as an address that holds it, which can be kept. */
export function asAddress(picture: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result));
    reader.onerror = () => reject(new Error("The picture could not be kept."));
    reader.readAsDataURL(picture);
  });
}

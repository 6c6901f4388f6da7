"use client";

import { useRouter } from "next/navigation";
import { useCallback } from "react";
import { SendWaiting } from "@/app/_parts/hand-ins/waiting-list";

/** Sends homework that still waits in this browser, and then looks at the lists anew. */
export function SendHomework() {
  const router = useRouter();
  return <SendWaiting onTaken={useCallback(() => router.refresh(), [router])} />;
}

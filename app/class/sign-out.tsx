"use client";

import { Press } from "@/app/_parts/press";
import { useSend } from "./use-send";

export function SignOut() {
  const { send, complaint } = useSend("/api/class/sign-out");
  const leave = async () => {
    // A whole new page: nothing of the one who leaves stays in this one's memory.
    if (await send({})) window.location.assign("/class");
  };
  return (
    <>
      <Press weight="small" onClick={leave}>
        Sign out
      </Press>
      <span role="alert">{complaint}</span>
    </>
  );
}

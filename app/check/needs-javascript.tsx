import { PlainPage } from "@/app/_parts/plain-page";

/** Said where a browser runs no programs. */
export function NeedsJavaScript() {
  return (
    <noscript>
      <PlainPage title="This page needs JavaScript">
        <p>
          The photograph is read in your browser and goes to no server, and JavaScript is turned off there. Turn it on
          for this address, then load the page again.
        </p>
      </PlainPage>
    </noscript>
  );
}

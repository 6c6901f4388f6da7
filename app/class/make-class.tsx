"use client";

import { Form } from "./form";

export function MakeClass() {
  return (
    <Form
      path="/api/class/make-class"
      press="Make the class"
      onDone={({ classId }) => window.location.assign(`/class/${String(classId)}`)}
      lines={[{ name: "title", label: "Name of the class", note: "For example: First year, Thursday." }]}
    />
  );
}

import { LitElement } from "lit";

/** A component that renders without a shadow root: plots must be in the document, and share its view's styles there. */
export class LightElement extends LitElement {
  protected override createRenderRoot(): HTMLElement {
    return this;
  }
}

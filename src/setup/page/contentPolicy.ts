import type { Plugin } from "vite";

/**
 * What the built page may load and run: its own files and nothing else. Styles are also written into elements, by the
 * charts and by the page; pictures are also made on the spot, for icons, print and exports. Code that is made from text
 * is forbidden. Workers get their script with its own answer, which carries no policy, and may make such code.
 */
const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self' blob:",
  "connect-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

/** Writes the policy into the built page; the development server needs scripts of its own and goes without. */
export function contentPolicy(): Plugin {
  return {
    name: "content-policy",
    apply: "build",
    transformIndexHtml: () => [
      { tag: "meta", attrs: { "http-equiv": "Content-Security-Policy", content: policy }, injectTo: "head-prepend" },
    ],
  };
}

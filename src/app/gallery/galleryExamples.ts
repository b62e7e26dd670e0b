import type { ViewName } from "../store/viewNames";

/** A worked example that opens with one click. */
export interface GalleryExample {
  readonly fileName: string;
  /** The view that it opens in. */
  readonly view: ViewName;
  readonly title: string;
  /** What is to be seen in it. */
  readonly words: string;
  readonly picture: PictureName;
}

export type PictureName =
  | "section"
  | "cylinder"
  | "rough"
  | "edges"
  | "pucks"
  | "floor"
  | "front"
  | "tunnel"
  | "trial"
  | "points";

/** Worked examples in the order of the views. Everything of the Harbour League is invented. */
export const galleryExamples: readonly GalleryExample[] = [
  {
    fileName: "harbour-league-puck.json",
    view: "section",
    title: "A puck's section in pool water",
    words: "What the drag is, how sure that is and how far the crisis is. Drag the edge.",
    picture: "section",
  },
  {
    fileName: "edge-radius-sweep.json",
    view: "section",
    title: "From a sharp to a round edge",
    words: "Edge radius from 2 to 50 % of the height: where the drag falls, and by which flow.",
    picture: "edges",
  },
  {
    fileName: "cylinder-smooth.json",
    view: "section",
    title: "The drag crisis of a smooth cylinder",
    words: "Rising and falling speeds against published points.",
    picture: "cylinder",
  },
  {
    fileName: "cylinder-rough.json",
    view: "section",
    title: "Rough cylinders",
    words: "The rougher the wall, the earlier the crisis and the higher the drag past it.",
    picture: "rough",
  },
  {
    fileName: "harbour-league-candidates.json",
    view: "puck",
    title: "Six candidates against a baseline",
    words: "Who has less drag, with what probability, and which keep the rules. Invented pucks.",
    picture: "pucks",
  },
  {
    fileName: "harbour-league-floor.json",
    view: "puck",
    title: "Over the pool floor, gap by gap",
    words: "Two invented pucks sliding and lifted off the tiles.",
    picture: "floor",
  },
  {
    fileName: "harbour-league-tradeoff.json",
    view: "puck",
    title: "Drag against inertia",
    words: "A search inside the demonstration rules and its front of best pucks.",
    picture: "front",
  },
  {
    fileName: "harbour-tunnel.json",
    view: "tunnel",
    title: "From a tunnel plan to a result",
    words: "Similarity, run plan, readings and their uncertainty, step by step. Invented readings.",
    picture: "tunnel",
  },
  {
    fileName: "harbour-trial.json",
    view: "trial",
    title: "A blind player trial",
    words: "Four coded pucks, scores, and what they prove. Invented scores.",
    picture: "trial",
  },
  {
    fileName: "harbour-measured.json",
    view: "compare",
    title: "Your measurements over the prediction",
    words: "Three tables over one curve, verdicts and likely causes. Invented points.",
    picture: "points",
  },
  {
    fileName: "cylinder-measured.json",
    view: "compare",
    title: "Published cylinders over the prediction",
    words: "Three published curves, where they agree with the engine and where with each other.",
    picture: "points",
  },
];

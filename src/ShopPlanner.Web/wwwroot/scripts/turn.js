// A piece in the round: turned by dragging, nearer and farther by wheel or two fingers, a part picked by a tap. x to the right,
// y to the back, z up, in millimetres, as the server gives the boxes.
import * as three from "/assets/scripts/three/three.module.min.js";
import { ask } from "./ask.js";
import { lineIsDown } from "./fields.js";

const tap = 6, step = 0.12;

export function show(place, owner) {
  const renderer = open();
  if (!renderer) return null;
  const view = new View(place, renderer, owner);
  return { draw: piece => view.draw(piece), pick: marks => view.pick(marks), close: () => view.close() };
}

function open() {
  try {
    return new three.WebGLRenderer({ antialias: true, alpha: true });
  } catch (problem) {
    // The page says so in words.
    console.warn("This browser shows nothing in 3D:", problem.message);
    return null;
  }
}

// The side of the part, y to the right and z up, drawn out along x.
function notched([dx, dy, dz], [deep, high]) {
  const corners = [[deep, 0], [dy, 0], [dy, dz], [0, dz], [0, high], [deep, high]];
  const side = new three.Shape(corners.map(([y, z]) => new three.Vector2(y - dy / 2, z - dz / 2)));
  const solid = new three.ExtrudeGeometry(side, { depth: dx, bevelEnabled: false });
  solid.translate(0, 0, -dx / 2);
  return solid.applyMatrix4(new three.Matrix4().set(0, 0, 1, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0, 1));
}

class View {
  constructor(place, renderer, owner) {
    Object.assign(this, { place, renderer, owner, picked: new Set(), boxes: new three.Group() });
    Object.assign(this, { around: -0.6, above: 0.4, away: 2.1 });
    this.scene = new three.Scene();
    this.camera = new three.PerspectiveCamera(32, 1, 1, 100000);
    this.scene.add(this.boxes, new three.HemisphereLight(0xffffff, 0xc8beae, 2.6), this.sun());
    renderer.setPixelRatio(Math.min(devicePixelRatio, 2));
    place.prepend(renderer.domElement);
    this.size = new ResizeObserver(() => this.fit());
    this.size.observe(place);
    this.hands();
  }

  sun() {
    const light = new three.DirectionalLight(0xffffff, 1.1);
    light.position.set(-1, -2, 3);
    return light;
  }

  draw(piece) {
    this.empty();
    this.middle = new three.Vector3(...piece.size.map(side => side / 2));
    this.reach = Math.hypot(...piece.size);
    [this.camera.near, this.camera.far] = [this.reach / 20, this.reach * 40];
    for (const box of piece.boxes) this.boxes.add(this.box(box));
    this.paint();
  }

  box({ mark, at, size, tint, notch }) {
    const paint = { color: tint, polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 };
    const shape = notch ? notched(size, notch) : new three.BoxGeometry(...size);
    const solid = new three.Mesh(shape, new three.MeshLambertMaterial(paint));
    const edges = new three.LineSegments(new three.EdgesGeometry(solid.geometry), new three.LineBasicMaterial());
    solid.position.set(...at.map((from, i) => from + size[i] / 2));
    solid.userData = { mark, tint };
    solid.add(edges);
    return solid;
  }

  pick(marks) {
    this.picked = new Set(marks);
    this.paint();
  }

  // Colours are the page's own, so that light and dark need no second set.
  paint() {
    const style = getComputedStyle(this.place), colour = name => new three.Color(style.getPropertyValue(name).trim());
    const [ink, chalk, light] = [colour("--ink"), colour("--chalk"), Number(style.getPropertyValue("--wood-light"))];
    for (const solid of this.boxes.children) {
      const isPicked = this.picked.has(solid.userData.mark);
      solid.material.color.set(isPicked ? chalk : solid.userData.tint).multiplyScalar(isPicked ? 1 : light);
      solid.children[0].material.color.set(isPicked ? chalk : ink);
    }
    this.fit();
  }

  fit() {
    const { clientWidth: width, clientHeight: height } = this.place;
    if (!width || !height) return;
    this.renderer.setSize(width, height, false);
    this.camera.aspect = width / height;
    this.camera.updateProjectionMatrix();
    this.render();
  }

  render() {
    if (!this.middle) return;
    const far = this.reach * this.away / Math.min(1, this.camera.aspect);
    const flat = Math.cos(this.above) * far;
    const eye = new three.Vector3(Math.sin(this.around) * flat, -Math.cos(this.around) * flat, Math.sin(this.above) * far);
    this.camera.position.copy(eye.add(this.middle));
    this.camera.up.set(0, 0, 1);
    this.camera.lookAt(this.middle);
    this.renderer.render(this.scene, this.camera);
  }

  hands() {
    const fingers = new Map();
    let moved = 0, apart = 0;
    const on = (event, act) => this.place.addEventListener(event, act, { passive: false });
    on("pointerdown", event => {
      fingers.set(event.pointerId, event);
      this.place.setPointerCapture(event.pointerId);
      [moved, apart] = [0, 0];
    });
    on("pointermove", event => {
      const before = fingers.get(event.pointerId);
      if (!before) return;
      fingers.set(event.pointerId, event);
      const [dx, dy] = [event.clientX - before.clientX, event.clientY - before.clientY];
      moved += Math.abs(dx) + Math.abs(dy);
      if (fingers.size === 1) this.turn(-dx / 150, dy / 150);
      else apart = this.pinch([...fingers.values()], apart);
    });
    const lift = event => {
      if (fingers.delete(event.pointerId) && event.type === "pointerup" && moved < tap) this.tap(event);
    };
    on("pointerup", lift);
    on("pointercancel", lift);
    on("wheel", event => {
      event.preventDefault();
      this.zoom(Math.exp(event.deltaY / 800));
    });
    on("keydown", event => this.key(event));
  }

  key(event) {
    const turns = { ArrowLeft: [step, 0], ArrowRight: [-step, 0], ArrowUp: [0, step], ArrowDown: [0, -step] };
    if (turns[event.key]) this.turn(...turns[event.key]);
    else if (event.key === "+" || event.key === "-") this.zoom(event.key === "+" ? 0.9 : 1.1);
    else return;
    event.preventDefault();
  }

  turn(around, above) {
    this.around += around;
    this.above = Math.max(-1.4, Math.min(1.5, this.above + above));
    this.render();
  }

  zoom(times) {
    this.away = Math.max(1, Math.min(8, this.away * times));
    this.render();
  }

  pinch([a, b], before) {
    const now = Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY);
    if (before) this.zoom(before / now);
    return now;
  }

  tap(event) {
    const place = this.place.getBoundingClientRect();
    const [x, y] = [(event.clientX - place.left) / place.width, (event.clientY - place.top) / place.height];
    const spot = new three.Vector2(x * 2 - 1, 1 - y * 2);
    const ray = new three.Raycaster();
    ray.setFromCamera(spot, this.camera);
    const hit = ray.intersectObjects(this.boxes.children, false)[0];
    if (hit && !lineIsDown()) ask(this.owner, "Pick", [hit.object.userData.mark]);
  }

  empty() {
    for (const solid of [...this.boxes.children]) {
      this.boxes.remove(solid);
      for (const one of [solid, solid.children[0]]) {
        one.geometry.dispose();
        one.material.dispose();
      }
    }
  }

  close() {
    this.size.disconnect();
    this.empty();
    this.renderer.dispose();
    this.renderer.domElement.remove();
  }
}

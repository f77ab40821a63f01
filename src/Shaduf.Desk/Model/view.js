// Shows station.glb, turning; a part that is pressed or chosen is told back by its mark.
import {
  AmbientLight, Box3, Color, DirectionalLight, MeshStandardMaterial, PerspectiveCamera, Raycaster, Scene, Vector2, Vector3,
  WebGLRenderer,
} from "three";
import { OrbitControls } from "three/addons/controls/OrbitControls.js";
import { GLTFLoader } from "three/addons/loaders/GLTFLoader.js";

const shades = { Stop: "#a4502f", Unchecked: "#c97b00", Look: "#e0b75a", Holds: "#4c7a34" };
const chosen = "#1f6f8b";
// What stands whole within so many metres of rack and stand is framed with them.
const nextToM = 4;

class View {
  constructor(host, url, statuses, teller) {
    this.host = host;
    this.statuses = statuses;
    this.teller = teller;
    this.scene = new Scene();
    this.scene.background = new Color("#faf7f0");
    this.scene.add(new AmbientLight("#ffffff", 1.6));
    const sun = new DirectionalLight("#ffffff", 2);
    sun.position.set(6, 12, 8);
    this.scene.add(sun);
    this.camera = new PerspectiveCamera(40, 1, 0.05, 500);
    this.renderer = new WebGLRenderer({ antialias: true });
    this.renderer.setPixelRatio(Math.min(2, window.devicePixelRatio));
    host.append(this.renderer.domElement);
    this.controls = new OrbitControls(this.camera, this.renderer.domElement);
    this.controls.listenToKeyEvents(host);
    this.controls.addEventListener("change", () => this.draw());
    this.renderer.domElement.addEventListener("click", (press) => this.press(press));
    this.sizes = new ResizeObserver(() => this.fit());
    this.sizes.observe(host);
    this.load(url);
  }

  async load(url) {
    const loaded = await new GLTFLoader().loadAsync(url);
    this.model?.removeFromParent();
    this.model = loaded.scene;
    this.model.traverse((part) => {
      if (part.isMesh) {
        part.userData.plain = part.material;
      }
    });
    this.scene.add(this.model);
    this.mark(this.statuses, null);
    this.fit();
    if (!this.host.dataset.ready) {
      this.frame();
    }
    this.host.dataset.ready = "yes";
  }

  // Stands so far off that rack and stand are seen whole with what stands next to them; the rest is found by turning.
  frame() {
    const box = new Box3();
    this.model.updateMatrixWorld(true);
    this.model.traverse((part) => {
      if (part.isMesh && this.statuses[this.markOf(part)]) {
        box.expandByObject(part);
      }
    });
    if (box.isEmpty()) {
      box.setFromObject(this.model);
    }
    const near = box.clone().expandByScalar(nextToM);
    this.model.traverse((part) => {
      const own = part.isMesh ? new Box3().setFromObject(part) : null;
      if (own && near.containsBox(own)) {
        box.union(own);
      }
    });
    const middle = box.getCenter(new Vector3());
    const half = (this.camera.fov * Math.PI) / 360;
    const narrow = Math.min(1, this.camera.aspect);
    const far = box.getSize(new Vector3()).length() / 2 / Math.sin(half) / narrow;
    this.controls.target.copy(middle);
    this.camera.position.copy(middle).add(new Vector3(0.5, 0.4, 0.7).setLength(far));
    this.controls.update();
  }

  // The loader makes names its own way and keeps those of the file.
  markOf(part) {
    return part.userData.name ?? part.name;
  }

  mark(statuses, mark) {
    this.statuses = statuses;
    this.model?.traverse((part) => {
      if (!part.isMesh) {
        return;
      }
      const own = this.markOf(part);
      const shade = own === mark ? chosen : shades[statuses[own]];
      part.material = shade ? new MeshStandardMaterial({ color: shade, roughness: 0.8 }) : part.userData.plain;
    });
    this.draw();
  }

  press(press) {
    const frame = this.renderer.domElement.getBoundingClientRect();
    const at = new Vector2(
      ((press.clientX - frame.left) / frame.width) * 2 - 1,
      1 - ((press.clientY - frame.top) / frame.height) * 2,
    );
    const ray = new Raycaster();
    ray.setFromCamera(at, this.camera);
    const hit = ray.intersectObject(this.model, true)[0];
    if (hit) {
      this.teller.invokeMethodAsync("Pick", this.markOf(hit.object));
    }
  }

  show(url, statuses) {
    this.statuses = statuses;
    return this.load(url);
  }

  fit() {
    const { clientWidth: width, clientHeight: height } = this.host;
    if (width && height) {
      this.renderer.setSize(width, height);
      this.camera.aspect = width / height;
      this.camera.updateProjectionMatrix();
      this.draw();
    }
  }

  draw() {
    this.renderer.render(this.scene, this.camera);
  }

  close() {
    this.sizes.disconnect();
    this.controls.dispose();
    this.renderer.dispose();
    this.renderer.domElement.remove();
  }
}

export const open = (host, url, statuses, teller) => new View(host, url, statuses, teller);

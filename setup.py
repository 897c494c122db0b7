"""The part of the packaging that cannot be declared: CMake builds the extension."""

import os
import re
import shlex
import subprocess
import sys
from pathlib import Path

from setuptools import Extension, setup
from setuptools.command.build_ext import build_ext

ROOT = Path(__file__).resolve().parent


def project_version() -> str:
    """Version from project(VERSION ...), the only place where it is written."""
    text = (ROOT / "CMakeLists.txt").read_text(encoding="utf-8")
    return re.search(r"^\s*VERSION (\d+\.\d+\.\d+)$", text, re.MULTILINE).group(1)


class CMakeBuild(build_ext):
    """Builds the target `_core` and puts it where setuptools expects the extension."""

    def build_extension(self, ext: Extension) -> None:
        place = Path(self.get_ext_fullpath(ext.name)).resolve()
        build = Path(self.build_temp).resolve()
        # The preset holds the flags; the interpreter is the one that runs pip.
        configure = ["cmake", "--preset", "release", "-S", ROOT, "-B", build]
        configure += [f"-DPython_EXECUTABLE={sys.executable}"]
        configure += ["-DGIBBSTEEL_BUILD_EXAMPLES=OFF"]
        # Further settings of the build, such as those of a packager.
        configure += shlex.split(os.environ.get("CMAKE_ARGS", ""))
        jobs = str(os.cpu_count() or 1)
        subprocess.run(configure, check=True, cwd=ROOT)
        subprocess.run(
            ["cmake", "--build", build, "--target", "_core", "--parallel", jobs],
            check=True,
        )
        place.parent.mkdir(parents=True, exist_ok=True)
        self.copy_file(str(build / "python" / "gibbsteel" / place.name), str(place))


setup(
    version=project_version(),
    ext_modules=[Extension("gibbsteel._core", sources=[])],
    cmdclass={"build_ext": CMakeBuild},
)

"""The catalogue: every crop, cultivar, rootstock and yard tree the program knows."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import cache
from types import MappingProxyType
from typing import Any

from attrs import evolve, field, frozen

from yardplan.plants import crop_rows, cultivar_rows, finder, own
from yardplan.plants.crop import Crop, TreeKind
from yardplan.plants.crop_rows import Training
from yardplan.plants.cultivar import Cultivar
from yardplan.yard.planting import PlantKey


@frozen(kw_only=True, eq=False)
class Catalogue:
    """What is known of plants. Look up with the methods: they follow synonyms and other names.

    `cultivars` and `crops` by key and id; `tree_kinds` yard trees by name; `names` other names of
    cultivars; `training` ways of training; `own_faults` what was wrong with records of the user's own.
    """

    cultivars: Mapping[PlantKey, Cultivar]
    crops: Mapping[str, Crop]
    tree_kinds: Mapping[str, TreeKind]
    names: Mapping[PlantKey, PlantKey] = field(factory=dict)
    training: Mapping[str, Training] = field(factory=dict)
    own_faults: tuple[str, ...] = ()
    _own: dict[str, Any] = field(factory=dict, init=False, repr=False)
    _crop_names: Mapping[str, str] = field(init=False, repr=False)
    _tree_names: Mapping[str, str] = field(init=False, repr=False)
    _folded: Mapping[tuple[str, str], PlantKey] = field(init=False, repr=False)

    @_crop_names.default
    def _index_crops(self) -> Mapping[str, str]:
        index = {alias.casefold(): crop.id for crop in self.crops.values() for alias in crop.aliases}
        index |= {crop.name.casefold(): crop.id for crop in self.crops.values()}
        return index | {name.casefold(): name for name in self.crops}

    @_tree_names.default
    def _index_trees(self) -> Mapping[str, str]:
        kinds = self.tree_kinds.values()
        index = {alias.casefold(): kind.name for kind in kinds for alias in kind.aliases}
        return index | {kind.name.casefold(): kind.name for kind in kinds}

    @_folded.default
    def _index_cultivars(self) -> Mapping[tuple[str, str], PlantKey]:
        index = {(name.crop, name.cultivar.casefold()): key for name, key in self.names.items()}
        return index | {(key.crop, key.cultivar.casefold()): key for key in self.cultivars}

    @classmethod
    def load(cls) -> Catalogue:
        """Read the shipped tables. Raises TableError listing every fault of the first bad table."""
        training = crop_rows.read_training()
        forms = crop_rows.read_forms(training)
        cultivars, names = cultivar_rows.with_clones(
            cultivar_rows.read_cultivars(), cultivar_rows.read_clones()
        )
        return cls(
            cultivars=MappingProxyType(cultivars), names=MappingProxyType(names),
            crops=MappingProxyType(crop_rows.read_crops(forms)),
            tree_kinds=MappingProxyType(crop_rows.read_trees(forms)), training=MappingProxyType(training),
        )

    def cultivar(self, key: PlantKey) -> Cultivar | None:
        """The cultivar of that key; crop aliases, other names and any case are understood."""
        found = self.cultivars.get(key)
        if found is not None:
            return found
        crop = self._crop_names.get(key.crop.casefold(), key.crop)
        known = self._folded.get((crop, key.cultivar.casefold()))
        return None if known is None else self.cultivars[known]

    def crop(self, crop_id: str) -> Crop | None:
        """The crop of that id, name or alias (`haskap`, `pear (European)`)."""
        found = self.crops.get(crop_id)
        if found is not None:
            return found
        known = self._crop_names.get(crop_id.casefold())
        return None if known is None else self.crops[known]

    def tree_kind(self, name: str) -> TreeKind | None:
        """The yard tree of that name or alias (`red oak`)."""
        known = self._tree_names.get(name.casefold())
        return None if known is None else self.tree_kinds[known]

    def of_crop(self, crop_id: str) -> tuple[Cultivar, ...]:
        """The cultivars of a crop, in table order."""
        return tuple(cultivar for key, cultivar in self.cultivars.items() if key.crop == crop_id)

    def with_own(self, records: Iterable[Mapping[str, Any]]) -> Catalogue:
        """The catalogue with the user's own cultivars; they go before shipped ones of the same name.

        Records that cannot be used are left out and said in `own_faults` of the new catalogue.
        The last answer is kept, as every drag asks with the same records.
        """
        kept = self._own.get("last")
        if kept is None or kept[0] is not records:
            # Kept as one pair: a worker may ask with other records at the same time.
            kept = (records, self._merged(records))
            self._own["last"] = kept
        merged: Catalogue = kept[1]
        return merged

    def _merged(self, records: Iterable[Mapping[str, Any]]) -> Catalogue:
        found, faults = own.read_own(records, self.crops)
        if not found and not faults:
            return self
        merged = dict(self.cultivars) | {cultivar.key: cultivar for cultivar in found}
        return evolve(self, cultivars=MappingProxyType(merged), own_faults=tuple(faults))

    def search(self, words: str) -> list[Cultivar]:
        """The cultivars in which all words are found, best first."""
        return finder.search(self, words)


@cache
def catalogue() -> Catalogue:
    """The shipped catalogue, read once."""
    return Catalogue.load()

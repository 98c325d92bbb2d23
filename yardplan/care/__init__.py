"""The years after planting: tasks, harvest, soil work, water."""

mod network {
    #[path = "/work/main/tests/it/network/drawing.rs"]
    mod drawing;
    #[path = "/work/main/tests/it/network/power.rs"]
    mod power;
    #[path = "/work/main/tests/it/network/supplies.rs"]
    mod supplies;
    #[path = "/work/main/tests/it/network/water.rs"]
    mod water;
}

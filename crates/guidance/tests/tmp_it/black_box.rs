pub(crate) mod dice; pub(crate) mod house; pub(crate) mod draw; pub(crate) mod shrink; pub(crate) mod impact; pub(crate) mod flow;

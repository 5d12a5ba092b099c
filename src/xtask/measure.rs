//! `xtask measure`: ratios of the core's own work, one `name value unit` a line; `bench` runs it in an optimized build.
use anyhow::Result;

use crate::fold_growth::fold_growth;
use crate::forecast_ratio::forecast_ratio;
use crate::history::history;
use crate::load_ratio::load_ratio;
use crate::say::say;
use crate::stranger::stranger;
use crate::watch_ratio::watch_ratio;
use crate::year_ratio::year_ratio;

/// Measures all.
pub(crate) fn measure() -> Result<()> {
    let times = |name: &str, ratio: f64| say(&format!("{name} {ratio:.2} times"));
    times("watch_ratio_10k", watch_ratio());
    times("forecast_1000_ratio", forecast_ratio()?);
    times("load_over_parse", load_ratio()?);
    #[cfg(feature = "measure")]
    times("merge_over_crdt", crate::merge_ratio::merge_ratio()?);
    times("fold_growth", fold_growth());
    times("year_ratio", year_ratio());
    history()?;
    say(&format!("stranger_20mb_ms {:.0} ms", stranger()?.as_secs_f64() * 1000.0));
    Ok(())
}

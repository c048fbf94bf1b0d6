//! Putting things in order, by one program for all: the standard sort is compiled anew for each sort of thing, and a phone has to fetch it.

/// The same things, what has the greatest number first, and equals as they stood.
pub fn greatest_first<T>(things: Vec<T>, number: impl Fn(&T) -> f64) -> Vec<T> {
    let mut order: Vec<(f64, usize)> = things.iter().map(number).zip(0..).collect();
    sort(&mut order);
    let mut things: Vec<Option<T>> = things.into_iter().map(Some).collect();
    order.into_iter().filter_map(|(_, at)| things.get_mut(at)?.take()).collect()
}

fn sort(order: &mut [(f64, usize)]) {
    order.sort_unstable_by(|a, b| b.0.total_cmp(&a.0).then(a.1.cmp(&b.1)));
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn greatest_comes_first_and_equals_stay_as_they_stood() {
        let things = vec![("a", 1.0), ("b", 3.0), ("c", 1.0), ("d", -2.0), ("e", 3.0)];
        let ordered: Vec<&str> = greatest_first(things, |thing| thing.1).into_iter().map(|thing| thing.0).collect();
        assert_eq!(ordered, ["b", "e", "a", "c", "d"]);
        assert!(greatest_first(Vec::<u8>::new(), |_| 0.0).is_empty());
    }
}
